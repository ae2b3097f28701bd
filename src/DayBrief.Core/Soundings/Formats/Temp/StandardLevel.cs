namespace DayBrief.Soundings.Formats.Temp;

/// <summary>A standard isobaric surface: the two figures that name it and how its height is coded.</summary>
/// <remarks>[WMO306] FM 35, regulations on hhh; the ranges are those that real heights fall in.</remarks>
internal sealed record StandardLevel(string Figures, int Hpa, Func<int, int> HeightM)
{
    public static IReadOnlyList<StandardLevel> Lower { get; } =
    [
        new("00", 1000, hhh => hhh < 500 ? hhh : 500 - hhh),
        new("92", 925, hhh => hhh),
        new("85", 850, hhh => 1000 + hhh),
        new("70", 700, hhh => hhh < 500 ? 3000 + hhh : 2000 + hhh),
        new("50", 500, hhh => 10 * hhh),
        new("40", 400, hhh => 10 * hhh),
        new("30", 300, hhh => 10 * hhh),
        new("25", 250, hhh => hhh < 500 ? 10_000 + (10 * hhh) : 10 * hhh),
        new("20", 200, hhh => 10_000 + (10 * hhh)),
        new("15", 150, hhh => 10_000 + (10 * hhh)),
        new("10", 100, hhh => 10_000 + (10 * hhh)),
    ];

    public static IReadOnlyList<StandardLevel> Upper { get; } =
    [
        new("70", 70, hhh => 10_000 + (10 * hhh)),
        new("50", 50, hhh => hhh < 500 ? 20_000 + (10 * hhh) : 10_000 + (10 * hhh)),
        new("30", 30, hhh => 20_000 + (10 * hhh)),
        new("20", 20, hhh => 20_000 + (10 * hhh)),
        new("10", 10, hhh => hhh < 500 ? 30_000 + (10 * hhh) : 20_000 + (10 * hhh)),
    ];

    /// <summary>The levels of part A or C.</summary>
    public static IReadOnlyList<StandardLevel> Of(char part) => part == 'A' ? Lower : Upper;
}
