using DayBrief.Flight.Gliders;
using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>How low and how steep anybody is advised to circle at a site. What the site leaves open has a cautious default.</summary>
/// <remarks>All defaults are common practice, no source. Heights are above the field. A spin costs a training glider 100 to
/// 150 m; the least heights leave that, the way into the circuit and the circuit itself, and more for those who have flown
/// less. Handbooks find more than 50° of bank seldom needed [FAA-13A].</remarks>
public sealed record CirclingLimits
{
    /// <summary>Nobody of the group circles below it, where the site sets none.</summary>
    public static readonly ByExperience<Height> DefaultLeastHeight =
        new(Height.FromMetres(400), Height.FromMetres(350), Height.FromMetres(250));

    /// <summary>Steepest bank advised to the group, degrees, where the site sets none.</summary>
    public static readonly ByExperience<double> DefaultSteepestBankDegrees = new(30, 40, 45);

    /// <summary>Least margin over the stall in the turn low down, per cent, where the site sets none.</summary>
    public const double DefaultLowMarginPct = 25;

    /// <summary>Height up to which it is low, where the site sets none.</summary>
    public static readonly Height DefaultLowBelow = Height.FromMetres(500);

    private static readonly ByExperience<Height?> NoHeights = new(null, null, null);

    private static readonly ByExperience<double?> NoBanks = new(null, null, null);

    /// <summary>Height below which nobody of the group circles; null where the site sets none.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 100 to 3000 m.</exception>
    public ByExperience<Height?> LeastHeight
    {
        get;
        init => field = new(Checked(value.BeforeSolo), Checked(value.LocalSolo), Checked(value.CrossCountry));
    } = NoHeights;

    /// <summary>Steepest bank advised to the group, degrees; null where the site sets none.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 15 to 60°.</exception>
    public ByExperience<double?> SteepestBankDegrees
    {
        get;
        init => field = new(Bank(value.BeforeSolo), Bank(value.LocalSolo), Bank(value.CrossCountry));
    } = NoBanks;

    /// <summary>Least margin over the stall in the turn low down, per cent; null where the site sets none.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 15 to 60 %.</exception>
    public double? LowMarginPct
    {
        get;
        init => field = value is { } known ? Guard.Finite(known, 15, 60) : null;
    }

    /// <summary>Height up to which it is low; null where the site sets none.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 100 to 3000 m.</exception>
    public Height? LowBelow
    {
        get;
        init => field = Checked(value);
    }

    /// <summary>What holds for a group.</summary>
    public CirclingRule For(Experience experience) => new(
        LeastHeight.For(experience) ?? DefaultLeastHeight.For(experience),
        LeastHeight.For(experience) is not null,
        SteepestBankDegrees.For(experience) ?? DefaultSteepestBankDegrees.For(experience),
        SteepestBankDegrees.For(experience) is not null,
        LowMarginPct ?? DefaultLowMarginPct,
        LowBelow ?? DefaultLowBelow);

    private static Height? Checked(Height? height) =>
        height is { } known ? Height.FromMetres(Guard.Finite(known.Metres, 100, 3000)) : null;

    private static double? Bank(double? degrees) => degrees is { } known ? Guard.Finite(known, 15, 60) : null;
}

/// <summary>How low and how steep one group is advised to circle.</summary>
/// <param name="LeastHeight">Height above the field below which nobody of it circles.</param>
/// <param name="LeastHeightSet">The site set it; else it is the common practice.</param>
/// <param name="SteepestBankDegrees">Steepest bank, degrees.</param>
/// <param name="SteepestBankSet">The site set it; else it is the common practice.</param>
/// <param name="LowMarginPct">Least margin over the stall in the turn low down, per cent.</param>
/// <param name="LowBelow">Height up to which it is low.</param>
public sealed record CirclingRule(
    Height LeastHeight, bool LeastHeightSet, double SteepestBankDegrees, bool SteepestBankSet, double LowMarginPct, Height LowBelow)
{
    /// <summary>The same for what computes circles.</summary>
    public CircleLimits Circles => new()
    {
        SteepestBankDeg = SteepestBankDegrees,
        LeastHeight = LeastHeight,
        LowBelow = LowBelow,
        LowMarginPct = LowMarginPct,
    };
}
