using DayBrief.Service.Languages;

namespace DayBrief.Service.Charts;

/// <summary>What the section through the thermal shows: height above the field up, downwind to the right.</summary>
internal sealed record ThermalSectionInput
{
    /// <summary>The thermal at some heights, in any order; at least two.</summary>
    public required IReadOnlyList<ThermalSlice> Slices { get; init; }

    /// <summary>The heights between which a glider can climb.</summary>
    public (double BottomM, double TopM)? Usable { get; init; }

    public double? CloudBaseM { get; init; }

    /// <summary>How fast the whole thermal drifts over the ground, m/s; null when not known.</summary>
    public double? DriftMs { get; init; }

    /// <summary>The local time for which it is drawn.</summary>
    public TimeOnly? Time { get; init; }

    public HeightUnit Unit { get; init; }

    public Language Language { get; init; } = Language.English;

    /// <summary>Step, in the reader's unit, to which a height that must not be undercut is rounded up.</summary>
    public double LeastStep => Unit == HeightUnit.Feet ? 10 : 5;

    public Figures In => new(Unit, Language);

    public double Width { get; init; } = TextStyle.PhoneWidth;

    public double Height { get; init; } = 300;
}

/// <summary>The thermal at one height.</summary>
/// <param name="HeightM">Metres above the field.</param>
/// <param name="RadiusM">Radius of the lift.</param>
/// <param name="AxisM">How far the axis stands downwind of its foot; negative upwind.</param>
/// <param name="UpdraftMs">Updraft in the core.</param>
/// <param name="OutwardMs">Speed of the air at the edge away from the core; negative is towards it.</param>
internal sealed record ThermalSlice(double HeightM, double RadiusM, double AxisM, double UpdraftMs, double OutwardMs);
