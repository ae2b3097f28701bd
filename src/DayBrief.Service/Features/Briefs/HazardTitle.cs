using DayBrief.Days;
using DayBrief.Service.Languages;

namespace DayBrief.Service.Features.Briefs;

/// <summary>The name of a caution.</summary>
internal static class HazardTitle
{
    /// <summary>English, which is the key of every other language.</summary>
    public static string Of(Hazard hazard) => hazard.Kind switch
    {
        HazardKind.Thunder => Language.Text("Thunderstorms"),
        HazardKind.Forecast => Language.Text("Aerodrome forecast"),
        HazardKind.ThunderInStore => Language.Text("Thunder in store"),
        HazardKind.WindOverLimit => Language.Text("Wind above the limit"),
        HazardKind.GustOverLimit => Language.Text("Gusts above the limit"),
        HazardKind.Showers => Language.Text("Showers"),
        HazardKind.Overdevelopment => Language.Text("Tall cumulus"),
        HazardKind.SpreadOut => Language.Text("Spreading cumulus"),
        HazardKind.Downdraught => Language.Text("Falling air"),
        HazardKind.Gusts => Language.Text("Gusts"),
        HazardKind.SurfaceWind => Language.Text("Wind at the ground"),
        HazardKind.Crosswind => Language.Text("Crosswind"),
        HazardKind.WindAloft => Language.Text("Wind in the thermals"),
        HazardKind.WindGradient => Language.Text("Wind gradient"),
        HazardKind.LowCloud => Language.Text("Low cloud base"),
        HazardKind.PoorVisibility => Language.Text("Poor visibility"),
        _ => OfHeights(hazard.Kind),
    };

    private static string OfHeights(HazardKind kind) => kind switch
    {
        HazardKind.LowTops => Language.Text("Low tops"),
        HazardKind.LowThermalling => Language.Text("Circling low"),
        HazardKind.CirclingTogether => Language.Text("Gliders close together"),
        HazardKind.Terrain => Language.Text("Hills and mountains"),
        HazardKind.Ceiling => Language.Text("Ceiling"),
        HazardKind.CloudClearance => Language.Text("Distance from cloud"),
        HazardKind.Icing => Language.Text("Freezing level"),
        HazardKind.Oxygen => Language.Text("Oxygen"),
        HazardKind.DensityAltitude => Language.Text("Thin air at launch"),
        HazardKind.Heat => Language.Text("Heat"),
        HazardKind.Cold => Language.Text("Cold"),
        HazardKind.Ultraviolet => Language.Text("Sunburn"),
        HazardKind.SuddenEnd => Language.Text("Sudden end"),
        _ => Language.Text("Last light"),
    };
}
