using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>Cautions of the thermals themselves: torn, low, crowded, over hills, gone at once.</summary>
internal static class ThermalHazards
{
    /// <summary>[FAA-13A] ch. 10: a landing field is chosen by 1,500 ft, so tops close above leave little time.</summary>
    public const double LowTopFt = 2000;

    /// <summary>How long thermals stay below <see cref="LowTopFt"/> before they grow, for a caution. Common practice, no source.</summary>
    public const double LowForMinutes = 30;

    /// <summary>Climb so weak that pilots hang on to it down to little height: 1 m/s. Common practice, no source.</summary>
    public const double WeakClimbMs = 1;

    /// <summary>Bend of foot and head from which the caution of too much wind names it: 45°. Common practice, no source.</summary>
    public const double LeanDegrees = 45;

    /// <summary>Tops below which everybody circles in the same little height: 3,000 ft. Common practice, no source.</summary>
    public const double CrowdedTopFt = 3000;

    /// <summary>Radius below which a usual circle no longer fits into the thermal: 90 m. v²/(g tan φ) is 95 m at 45 kt and 30° of
    /// bank; the bound is common practice, no source.</summary>
    public const double NarrowRadiusM = 90;

    /// <summary>Distance between thermals from which gliders gather in few: 4 km. Common practice, no source.</summary>
    public const double FewSpacingM = 4000;

    public static IEnumerable<Hazard?> Of(Brief brief)
    {
        var (day, flyable) = (brief.Day, brief.Day.Times.FirstUsable is not null);
        yield return day.Wind is { TooMuch: true } aloft
            ? Daylight.WithThermals(brief, new(HazardKind.WindAloft, aloft.Mean.Speed.MetresPerSecond) { Beside = aloft.LeanDegrees >= LeanDegrees ? aloft.LeanDegrees : null })
            : null;
        if (!flyable)
            yield break;
        yield return brief.UsableTop is { } top && top.Feet < LowTopFt ? Daylight.WithThermals(brief, new(HazardKind.LowTops, top.Metres)) : null;
        yield return CirclingLow(brief);
        yield return Crowded(brief);
        yield return brief.Site.TerrainKind is { } terrain and not Flight.Terrain.TerrainKind.Flat
            ? Daylight.WithThermals(brief, new(HazardKind.Terrain, day.Wind?.Mean.Speed.MetresPerSecond) { About = terrain.ToString() })
            : null;
        yield return day.ThermalType.Kind == ThermalKind.ShortLived ? Daylight.WithThermals(brief, new(HazardKind.SuddenEnd)) : null;
    }

    /// <summary>The first cause that applies: low tops all day, weak climbs, lift that stays low for long before it grows. The figure
    /// is the cause's, m or m/s.</summary>
    private static Hazard? CirclingLow(Brief brief)
    {
        if (brief.UsableTop is { } top && top.Feet < CrowdedTopFt)
            return Daylight.WithThermals(brief, new(HazardKind.LowThermalling, top.Metres) { About = "top" });
        if (brief.Day.Steps.Max(step => step.ClimbMs) is { } climb and < WeakClimbMs)
            return Daylight.WithThermals(brief, new(HazardKind.LowThermalling, climb) { About = "weak" });
        var bound = Height.FromFeet(LowTopFt).Metres;
        var low = brief.Day.Steps.SkipWhile(step => step.UsableTopAglM is null)
            .TakeWhile(step => step.UsableTopAglM < bound).ToArray();
        return low.Length > 0 && (low[^1].Time - low[0].Time).TotalMinutes >= LowForMinutes
            ? new(HazardKind.LowThermalling, bound) { From = low[0].Time, To = low[^1].Time, About = "long" }
            : null;
    }

    /// <summary>The first cause that applies: little height, narrow thermals, few of them; the figure is the cause's, m.</summary>
    private static Hazard? Crowded(Brief brief)
    {
        var best = brief.Day.Steps.Where(step => step.ClimbMs > 0).MaxBy(step => step.ClimbMs);
        Hazard? crowded = brief.UsableTop is { } top && top.Feet < CrowdedTopFt ? new(HazardKind.CirclingTogether, top.Metres) { About = "top" }
            : best?.ThermalRadiusM < NarrowRadiusM ? new(HazardKind.CirclingTogether, best.ThermalRadiusM) { About = "narrow" }
            : best?.SpacingM >= FewSpacingM ? new(HazardKind.CirclingTogether, best.SpacingM) { About = "few" }
            : null;
        return crowded is null ? null : Daylight.WithThermals(brief, crowded);
    }
}
