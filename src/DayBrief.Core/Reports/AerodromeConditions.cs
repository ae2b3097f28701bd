using System.Collections.Immutable;
using DayBrief.Units;

namespace DayBrief.Reports;

/// <summary>Wind, visibility, weather and cloud, as a report or a forecast group states them. What it leaves out is null or
/// empty.</summary>
public sealed record AerodromeConditions
{
    /// <summary>Surface wind.</summary>
    public SurfaceWind? Wind { get; init; }

    /// <summary>CAVOK: visibility 10 km or more, no cloud below 5,000 ft or the highest minimum sector altitude, no CB or
    /// TCU, no weather.</summary>
    public bool IsCavok { get; init; }

    /// <summary>Prevailing visibility; null under CAVOK, where it is 10 km or more, and where not measured.</summary>
    public Visibility? Visibility { get; init; }

    /// <summary>Lowest visibility in some direction, where reported.</summary>
    public Visibility? LowestVisibility { get; init; }

    /// <summary>Weather.</summary>
    public ImmutableArray<PresentWeather> Weather { get; init; } = [];

    /// <summary>Weather is said to have ended (NSW).</summary>
    public bool NoSignificantWeather { get; init; }

    /// <summary>Cloud groups, as given.</summary>
    public ImmutableArray<CloudLayer> Clouds { get; init; } = [];

    /// <summary>The sky is obscured (VV).</summary>
    public bool IsObscured { get; init; }

    /// <summary>Vertical visibility; null where not measured or the sky is not obscured.</summary>
    public Height? VerticalVisibility { get; init; }
}
