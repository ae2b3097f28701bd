namespace DayBrief.Soundings.Formats.Temp;

/// <summary>A standard isobaric surface: the two figures that name it and how its height is coded.</summary>
/// <remarks>[WMO306] FM 35, regulations on hhh; the ranges are those that real heights fall in.</remarks>
/// <param name="Figures">The two figures.</param>
/// <param name="Hpa">Its pressure.</param>
/// <param name="UsualM">Its height in the standard atmosphere [ICAO7488], rounded.</param>
/// <param name="HeightM">Its height from hhh.</param>
internal sealed record StandardLevel(string Figures, int Hpa, int UsualM, Func<int, int> HeightM)
{
    public static IReadOnlyList<StandardLevel> Lower { get; } =
    [
        new("00", 1000, 111, hhh => hhh < 500 ? hhh : 500 - hhh),
        new("92", 925, 762, hhh => hhh),
        new("85", 850, 1457, hhh => 1000 + hhh),
        new("70", 700, 3012, hhh => hhh < 500 ? 3000 + hhh : 2000 + hhh),
        new("50", 500, 5574, hhh => 10 * hhh),
        new("40", 400, 7185, hhh => 10 * hhh),
        new("30", 300, 9164, hhh => 10 * hhh),
        new("25", 250, 10363, hhh => hhh < 500 ? 10_000 + (10 * hhh) : 10 * hhh),
        new("20", 200, 11784, hhh => 10_000 + (10 * hhh)),
        new("15", 150, 13608, hhh => 10_000 + (10 * hhh)),
        new("10", 100, 16180, hhh => 10_000 + (10 * hhh)),
    ];

    public static IReadOnlyList<StandardLevel> Upper { get; } =
    [
        new("70", 70, 18442, hhh => 10_000 + (10 * hhh)),
        new("50", 50, 20576, hhh => hhh < 500 ? 20_000 + (10 * hhh) : 10_000 + (10 * hhh)),
        new("30", 30, 23849, hhh => 20_000 + (10 * hhh)),
        new("20", 20, 26481, hhh => 20_000 + (10 * hhh)),
        new("10", 10, 31055, hhh => hhh < 500 ? 30_000 + (10 * hhh) : 20_000 + (10 * hhh)),
    ];

    /// <summary>Whether hhh makes a height that this level may have; weather moves it by some per cent (common practice).</summary>
    public bool IsPlausible(int hhh) => Math.Abs(HeightM(hhh) - UsualM) <= 400 + (0.1 * UsualM);

    /// <summary>The levels of part A or C.</summary>
    public static IReadOnlyList<StandardLevel> Of(char part) => part == 'A' ? Lower : Upper;
}
