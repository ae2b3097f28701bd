using DayBrief.Units;

namespace DayBrief.Flight.Gliders;

/// <summary>A steady turn without slip: how wide, how fast round, and what it costs.</summary>
/// <remarks>[FAA-25] ch. 5: r = V²/(g·tan φ), rate = g·tan φ/V, load factor 1/cos φ, stall speed times its root. Air density is
/// taken as that of the airspeed indicator's calibration, so indicated and true airspeed are the same here.</remarks>
public sealed record Circle
{
    /// <summary>Standard acceleration of gravity, m s⁻² [SI].</summary>
    internal const double Gravity = 9.80665;

    private Circle(Glider glider, double bankDeg, double speedMs)
    {
        (Glider, BankDeg, SpeedMs) = (glider, bankDeg, speedMs);
        var bank = bankDeg * Math.PI / 180;
        LoadFactor = 1 / Math.Cos(bank);
        RadiusM = speedMs * speedMs / (Gravity * Math.Tan(bank));
        RateDegS = Gravity * Math.Tan(bank) / speedMs * 180 / Math.PI;
        SinkMs = glider.Polar.SinkMs(speedMs, LoadFactor);
    }

    /// <summary>The glider that flies it.</summary>
    public Glider Glider { get; }

    /// <summary>Bank, degrees.</summary>
    public double BankDeg { get; }

    /// <summary>Speed, m/s.</summary>
    public double SpeedMs { get; }

    /// <summary>Speed.</summary>
    public Speed Speed => Speed.FromMetresPerSecond(SpeedMs);

    /// <summary>Radius, m.</summary>
    public double RadiusM { get; }

    /// <summary>Rate of turn, degrees a second.</summary>
    public double RateDegS { get; }

    /// <summary>Time for one turn, s.</summary>
    public double PeriodS => 360 / RateDegS;

    /// <summary>Load factor, g.</summary>
    public double LoadFactor { get; }

    /// <summary>Sink in still air, m/s.</summary>
    public double SinkMs { get; }

    /// <summary>How far the speed lies above the stall in this turn, per cent of that stall speed; negative below it.</summary>
    public double StallMarginPct =>
        100 * ((SpeedMs / (Glider.Stall.MetresPerSecond * Math.Sqrt(LoadFactor))) - 1);

    /// <summary>Speed at another bank that keeps the margin over the stall, m/s: so circles are tightened.</summary>
    public double SpeedMsAt(double bankDeg) =>
        SpeedMs * Math.Sqrt(Math.Cos(BankDeg * Math.PI / 180) / Math.Cos(bankDeg * Math.PI / 180));

    /// <summary>Time to roll between this bank and wings level, s.</summary>
    public double RollS => BankDeg / Glider.RollRateDegS;

    /// <summary>The turn at a bank and a speed.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Bank outside 5 to 65°, speed outside 8 to 120 m/s.</exception>
    public static Circle At(Glider glider, double bankDeg, Speed speed)
    {
        ArgumentNullException.ThrowIfNull(glider);
        return new(glider, Guard.Finite(bankDeg, 5, 65), Guard.Finite(speed.MetresPerSecond, 8, 120, nameof(speed)));
    }

    internal static Circle At(Glider glider, double bankDeg, double speedMs) => new(glider, bankDeg, speedMs);
}
