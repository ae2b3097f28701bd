using DayBrief.Soundings.Formats;
using DayBrief.Units;

namespace DayBrief.Soundings.Quality;

/// <summary>Tells how far the balloon had drifted by the middle of the troposphere, where its positions are known: what it
/// measured there belongs to another place.</summary>
/// <remarks>From 5 km on, the size of a valley or a shower; common practice, no source.</remarks>
internal static class BalloonDrift
{
    private const double ToldFromKm = 5;
    private const double LowestHpa = 500;

    public static void Check(IReadOnlyList<ReadLevel> levels, Position? launch, RemarkList remarks)
    {
        var level = levels.LastOrDefault(level => level is { Position: not null, PressureHpa: >= LowestHpa });
        if (level?.Position is { } position && launch is { } site && site.KilometresTo(position) is >= ToldFromKm and var distance)
        {
            remarks.Add(
                Severity.Info,
                "balloon-drift",
                $"At {level.PressureHpa:0} hPa the balloon was {distance:0} km from the launch site.",
                level.PressureHpa);
        }
    }
}
