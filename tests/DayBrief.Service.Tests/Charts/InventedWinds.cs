using DayBrief.Units;

namespace DayBrief.Service.Charts;

/// <summary>Winds for looking at charts. Invented.</summary>
internal static class InventedWinds
{
    public static WindByHeightInput Backing { get; } = new(
    [
        At(0, 360, 4), At(305, 20, 9), At(610, 40, 13), At(915, 50, 15), At(1525, 60, 18, "top of the thermals"),
        At(2440, 80, 27, "above the inversion"), At(3050, 100, 52),
    ]);

    public static WindByHeightInput Westerly { get; } = new(
    [
        At(0, 245, 8), At(300, 255, 14), At(600, 262, 1), new(1000, null, "no report"), At(1500, 0, 0), At(2000, 280, 68),
    ])
    { Unit = HeightUnit.Metres };

    private static WindLevel At(double metres, double from, double knots, string? note = null) =>
        new(metres, Wind.From(from, Speed.FromKnots(knots)), note);
}
