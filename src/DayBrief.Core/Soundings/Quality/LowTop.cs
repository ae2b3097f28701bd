using DayBrief.Soundings.Formats;

namespace DayBrief.Soundings.Quality;

/// <summary>An ascent that ends too low to show the day's thermals, or begins too high to be one.</summary>
/// <remarks>Thermals of 3 km over the ground are ordinary on good days; common practice, no source.</remarks>
internal static class LowTop
{
    private const double NeededM = 3000;
    private const double HighestGroundHpa = 550;

    public static void Check(IReadOnlyList<ColumnLevel> column, RemarkList remarks)
    {
        if (column[^1].HeightAglM < NeededM)
        {
            remarks.Add(
                Severity.Warning,
                "top-too-low",
                $"The temperatures end {column[^1].HeightAglM:0} m above the lowest level; thermals may rise above that.",
                column[^1].PressureHpa);
        }

        if (column[0].PressureHpa < HighestGroundHpa)
        {
            remarks.Add(
                Severity.Warning,
                "ground-missing",
                $"The lowest temperature is at {column[0].PressureHpa:0.#} hPa, too high to be the ground.",
                column[0].PressureHpa);
        }
    }
}
