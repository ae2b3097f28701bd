using DayBrief.Flight.Gliders;

namespace DayBrief.Flight.Centring;

/// <summary>How far a manoeuvre moves the centre of the circle, from the kinematics of bank and turn alone.</summary>
internal static class CentreShift
{
    private const double Step = 0.02;

    /// <summary>Shift by rolling level, staying level for some seconds and rolling in again, m, and the heading in which the
    /// centre moves, degrees of turn after the beginning of the roll-out.</summary>
    public static (double Metres, double Deg) Straighten(Circle circle, double levelS)
    {
        var time = 0.0;
        return Fly(circle, () => (time += Step) < circle.RollS + levelS ? 0 : circle.BankDeg, circle.RollS + levelS + (2 * circle.RollS));
    }

    /// <summary>The closed form: each roll counts as half of its time level, so the centre moves by V·(level + roll).</summary>
    public static double StraightenClosedForm(Circle circle, double levelS) => circle.SpeedMs * (levelS + circle.RollS);

    /// <summary>Seconds level that move the centre so far: distance/V less one roll; 0 where rolling out and in already does more.</summary>
    public static double LevelSFor(Circle circle, double metres) => Math.Max(0, (metres / circle.SpeedMs) - circle.RollS);

    /// <summary>Shift towards the glider's place at the beginning, m, of tightening, holding that through an angle and easing
    /// out over half a turn: ΔR·(1 − (2/π)·cos(hold + 90°)), because easing moves the centre away from where the glider then is.</summary>
    public static double TightenClosedForm(Circle circle, double tightenDeg, double holdDeg)
    {
        var tight = Circle.At(circle.Glider, circle.BankDeg + tightenDeg, Tightened(circle, tightenDeg));
        var easing = (holdDeg + 90) * Math.PI / 180;
        return (circle.RadiusM - tight.RadiusM) * (1 - (2 / Math.PI * Math.Cos(easing)));
    }

    /// <summary>Speed in the tighter circle: the same margin above the stall, m/s.</summary>
    private static double Tightened(Circle circle, double tightenDeg) =>
        circle.SpeedMs * Math.Sqrt(Math.Cos(circle.BankDeg * Math.PI / 180) / Math.Cos((circle.BankDeg + tightenDeg) * Math.PI / 180));

    private static (double Metres, double Deg) Fly(Circle circle, Func<double> bankWantedDeg, double seconds)
    {
        var (x, y, heading, bank) = (0.0, 0.0, 0.0, circle.BankDeg);
        for (var time = 0.0; time < seconds; time += Step)
        {
            bank += Math.Clamp(bankWantedDeg() - bank, -circle.Glider.RollRateDegS * Step, circle.Glider.RollRateDegS * Step);
            var half = 0.5 * Step * Circle.Gravity * Math.Tan(bank * Math.PI / 180) / circle.SpeedMs;
            x += circle.SpeedMs * Step * Math.Cos(heading + half);
            y += circle.SpeedMs * Step * Math.Sin(heading + half);
            heading += 2 * half;
        }

        var (dx, dy) = (x - (circle.RadiusM * Math.Sin(heading)), y + (circle.RadiusM * Math.Cos(heading)) - circle.RadiusM);
        return (Math.Sqrt((dx * dx) + (dy * dy)), Math.Atan2(dy, dx) * 180 / Math.PI);
    }
}
