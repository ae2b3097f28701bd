using DayBrief.Units;

namespace DayBrief.Flight.Gliders;

/// <summary>How low, how steep and how near the stall a computed circle may be at most. Nothing that is advised lies beyond.</summary>
public sealed record CircleLimits
{
    /// <summary>Least margin over the stall in any turn, per cent (common practice, no source).</summary>
    public const double LeastMarginPct = 100 * (Glider.LeastSpeedOverStall - 1);

    /// <summary>Steepest bank, corrections included, degrees; 65, the steepest that is computed at all, unless set.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 15 to 65°.</exception>
    public double SteepestBankDeg
    {
        get;
        init => field = Guard.Finite(value, 15, 65);
    } = 65;

    /// <summary>Nobody circles below it, above the ground.</summary>
    public Height LeastHeight { get; init; }

    /// <summary>Height above the ground up to which the margin is <see cref="LowMarginPct"/>.</summary>
    public Height LowBelow { get; init; }

    /// <summary>Least margin low down, per cent.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below <see cref="LeastMarginPct"/> or above 100 %.</exception>
    public double LowMarginPct
    {
        get;
        init => field = Guard.Finite(value, LeastMarginPct - 1e-9, 100);
    } = LeastMarginPct;

    /// <summary>Least margin over the stall in the turn at a height above the ground, per cent.</summary>
    public double MarginPctAt(Height height) => height < LowBelow ? LowMarginPct : LeastMarginPct;

    /// <summary>The slowest circle that keeps the margin at a bank and a height.</summary>
    /// <remarks>[FAA-25] ch. 5: the stall speed grows with the root of the load factor 1/cos φ.</remarks>
    public Circle SlowestAt(Glider glider, double bankDeg, Height height)
    {
        ArgumentNullException.ThrowIfNull(glider);
        return Circle.At(glider, bankDeg, SlowestMs(glider, bankDeg, MarginPctAt(height)));
    }

    /// <summary>The slowest speed that keeps a margin (per cent) over the stall at a bank.</summary>
    public static Speed Slowest(Glider glider, double bankDeg, double marginPct)
    {
        ArgumentNullException.ThrowIfNull(glider);
        return Speed.FromMetresPerSecond(SlowestMs(glider, Guard.Finite(bankDeg, 0, 80), marginPct));
    }

    internal static double SlowestMs(Glider glider, double bankDeg, double marginPct) =>
        (1 + (marginPct / 100)) * glider.Stall.MetresPerSecond / Math.Sqrt(Math.Cos(bankDeg * Math.PI / 180));
}
