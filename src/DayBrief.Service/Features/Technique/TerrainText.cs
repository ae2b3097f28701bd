using DayBrief.Days;

namespace DayBrief.Service.Features.Technique;

/// <summary>What changes in hills and mountains: general trade knowledge, deferring to the local mountain instructor.</summary>
internal static class TerrainText
{
    private static readonly string[] Words = ["hill", "mountain", "ridge", "valley", "alp"];

    public static string? Of(Site site) =>
        site.Terrain is { } terrain && Words.Any(word => terrain.Contains(word, StringComparison.OrdinalIgnoreCase))
            ? "Near slopes never turn towards the hill; circle only with the height above the ridge that your mountain instructor sets. "
                + "Thermals there are narrow and broken, the valley wind moves them, and the sink beside them is strong. "
                + "The local mountain instructor's word comes before this page."
            : null;
}
