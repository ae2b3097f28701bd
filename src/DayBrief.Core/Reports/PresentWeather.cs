using System.Collections.Immutable;

namespace DayBrief.Reports;

/// <summary>One weather group, such as -TSRA.</summary>
/// <param name="Code">As written.</param>
/// <param name="Intensity">"-", "+" or empty.</param>
/// <param name="InVicinity">Within about 16 km of the aerodrome, not at it (VC).</param>
/// <param name="Descriptor">MI, BC, PR, DR, BL, SH, TS or FZ.</param>
/// <param name="Phenomena">RA, SN, BR and so on.</param>
public sealed record PresentWeather(
    string Code, string Intensity, bool InVicinity, string? Descriptor, ImmutableArray<string> Phenomena)
{
    /// <summary>Thunder, with or without rain.</summary>
    public bool IsThunderstorm => Descriptor == "TS";

    /// <summary>Anything that falls.</summary>
    public bool IsPrecipitation => Phenomena.Any(code => code is "DZ" or "RA" or "SN" or "SG" or "IC" or "PL" or "GR" or "GS" or "UP");
}
