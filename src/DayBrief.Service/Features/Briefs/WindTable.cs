using DayBrief.Days;
using DayBrief.Units;

namespace DayBrief.Service.Features.Briefs;

/// <summary>One line of wind by height. Null is not reported.</summary>
internal readonly record struct WindRow(Height Height, Wind? Wind);

/// <summary>Wind at round heights above the field, from the ground to a little above the day's thermals.</summary>
internal static class WindTable
{
    private static readonly double[] Feet = [0, 1000, 2000, 3000, 4000, 5000, 6000, 8000, 10000, 12000, 15000];
    private static readonly double[] Metres = [0, 300, 600, 1000, 1500, 2000, 2500, 3000, 4000, 5000];

    public static IReadOnlyList<WindRow> Rows(Brief brief, Reader reader)
    {
        var heights = reader.IsMetric ? Metres.Select(Height.FromMetres) : Feet.Select(Height.FromFeet);
        var enough = Math.Max(1500, 1.4 * (brief.Day.MaxDepth?.Metres ?? 0));
        return
        [
            .. heights
                .TakeWhile(height => height.Metres <= enough)
                .Select(height => new WindRow(height, brief.WindAt(Height.FromMetres(Math.Max(10, height.Metres))))),
        ];
    }
}
