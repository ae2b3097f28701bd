using DayBrief.Days;
using DayBrief.Flight.Terrain;

namespace DayBrief.Service.Features.Technique;

/// <summary>What changes in hills and mountains, where the site states them or its own words for its land speak of them.</summary>
internal static class TerrainText
{
    private static readonly string[] Mountains = ["mountain", "alp"];
    private static readonly string[] Hills = ["hill", "ridge", "valley"];

    public static IReadOnlyList<TerrainCaution> Of(Site site) => TerrainCautions.For(
        site.TerrainKind
        ?? (Speaks(site, Mountains) ? TerrainKind.Mountains : Speaks(site, Hills) ? TerrainKind.Hills : TerrainKind.Flat));

    private static bool Speaks(Site site, string[] words) =>
        words.Any(word => site.Terrain?.Contains(word, StringComparison.OrdinalIgnoreCase) ?? false);
}
