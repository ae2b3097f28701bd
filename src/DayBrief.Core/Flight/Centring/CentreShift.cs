using DayBrief.Flight.Gliders;

namespace DayBrief.Flight.Centring;

/// <summary>How far a manoeuvre moves the centre of the circle, from the kinematics of bank and turn alone.</summary>
internal static class CentreShift
{
    private const double Step = 0.02;

    /// <summary>Shift by rolling level, staying level for some seconds and rolling in again, m, and the heading in which the
    /// centre moves, degrees of turn after the beginning of the roll-out.</summary>
    public static (double Metres, double Deg) Straighten(Circle circle, double levelS) => Shallow(circle, circle.BankDeg, levelS);

    /// <summary>The same for taking off some bank only, held for some seconds between the rolls.</summary>
    public static (double Metres, double Deg) Shallow(Circle circle, double byDeg, double heldS)
    {
        var (x, y) = Path(circle, byDeg, heldS, quarterTurns: 0).Centre;
        return (Math.Sqrt((x * x) + Square(y - circle.RadiusM)), Math.Atan2(y - circle.RadiusM, x) * 180 / Math.PI);
    }

    /// <summary>The flown way of taking off bank (all of it to straighten), m, from the beginning of the roll-out heading along x and turning left, to some
    /// quarters of the new circle; and the new circle's centre.</summary>
    public static (IReadOnlyList<(double X, double Y)> Points, (double X, double Y) Centre) Path(
        Circle circle, double byDeg, double heldS, int quarterTurns)
    {
        var (x, y, heading, bank) = (0.0, 0.0, 0.0, circle.BankDeg);
        var rolled = circle.Glider.RollRateDegS * Step;
        var points = new List<(double X, double Y)> { (0, 0) };
        var rollS = byDeg / circle.Glider.RollRateDegS;
        var steps = (int)((heldS + (2 * rollS) + (quarterTurns * circle.PeriodS / 4)) / Step) + 1;
        for (var step = 1; step <= steps; step++)
        {
            var wanted = circle.BankDeg - (step * Step < rollS + heldS ? byDeg : 0);
            bank += Math.Clamp(wanted - bank, -rolled, rolled);
            var half = 0.5 * Step * Circle.Gravity * Math.Tan(bank * Math.PI / 180) / circle.SpeedMs;
            x += circle.SpeedMs * Step * Math.Cos(heading + half);
            y += circle.SpeedMs * Step * Math.Sin(heading + half);
            heading += 2 * half;
            if (step % 10 == 0 || step == steps)
                points.Add((x, y));
        }

        return (points, (x - (circle.RadiusM * Math.Sin(heading)), y + (circle.RadiusM * Math.Cos(heading))));
    }

    /// <summary>Seconds of a roll that count as flown at the full rate of turn; the other half counts as level.</summary>
    public static double HalfRollS(Circle circle) => 0.5 * circle.RollS;

    /// <summary>The closed form: each roll counts as half of its time level, so the centre moves by V·(level + roll).</summary>
    public static double StraightenClosedForm(Circle circle, double levelS) => circle.SpeedMs * (levelS + circle.RollS);

    /// <summary>Seconds level that move the centre so far: distance/V less one roll; 0 where rolling out and in already does more.</summary>
    public static double LevelSFor(Circle circle, double metres) => Math.Max(0, (metres / circle.SpeedMs) - circle.RollS);

    /// <summary>Seconds (from the middle of one roll to the middle of the other) for which taking off some bank moves the centre so
    /// far; null if it never does. While shallow, the steep circle's centre runs along the heading at V·(1−tan φ₁/tan φ₀) and
    /// the heading turns on, so the shift is V·(1−tan φ₁/tan φ₀)·(2/ω₁)·sin(ω₁t/2).</summary>
    public static double? ShallowSFor(Circle circle, double byDeg, double metres)
    {
        var shallow = Circle.At(circle.Glider, circle.BankDeg - byDeg, circle.SpeedMs);
        var half = 0.5 * shallow.RateDegS * Math.PI / 180;
        var sine = metres * half / (circle.SpeedMs * (1 - (circle.RadiusM / shallow.RadiusM)));
        return sine <= 1 ? Math.Asin(sine) / half : null;
    }

    /// <summary>Shift towards the glider's place at the beginning, m, of tightening, holding that through an angle and easing
    /// out over half a turn: ΔR·(1 − (2/π)·cos(hold + 90°)), because easing moves the centre away from where the glider then is.</summary>
    public static double TightenClosedForm(Circle circle, double tightenDeg, double holdDeg)
    {
        var tight = Circle.At(circle.Glider, circle.BankDeg + tightenDeg, circle.SpeedMsAt(circle.BankDeg + tightenDeg));
        var easing = (holdDeg + 90) * Math.PI / 180;
        return (circle.RadiusM - tight.RadiusM) * (1 - (2 / Math.PI * Math.Cos(easing)));
    }

    private static double Square(double value) => value * value;
}
