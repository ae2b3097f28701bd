using DayBrief.Units;

namespace DayBrief.Service.Charts;

/// <summary>Thermals and circles for looking at charts. Invented.</summary>
internal static class InventedThermals
{
    public static CirclePlanInput Usual { get; } = new()
    {
        Contours = [new(40, 2.5), new(75, 1.5), new(125, 0)],
        CircleRadiusM = 68,
        OffsetM = 55,
        LagDeg = 24,
        RollOutAfterDeg = 52,
        HalfRollDeg = 14,
        ShiftM = 55,
        Seconds = (1.2, 2.6, 0.8),
        CoreMs = 3.1,
        Wind = Wind.From(240, Speed.FromKnots(12)),
    };

    public static CirclePlanInput Broad { get; } = new()
    {
        Contours = [new(110, 3), new(320, 0)],
        CircleRadiusM = 80,
        OffsetM = 210,
        LagDeg = 40,
        RollOutAfterDeg = 35,
        HalfRollDeg = 15,
        ShiftM = 160,
        Seconds = (2.4, 2.1, 4.5),
        CoreMs = 3.6,
        TurnsRight = true,
        Unit = HeightUnit.Metres,
        Wind = Wind.From(20, Speed.FromKnots(1)),
    };

    public static CirclePlanInput Small { get; } = new()
    {
        Contours = [new(20, 1), new(55, 0)],
        CircleRadiusM = 70,
        OffsetM = 40,
        LagDeg = 15,
        RollOutAfterDeg = 70,
        ShiftM = 30,
        CoreMs = 1.6,
    };

    public static ThermalSectionInput Leaning { get; } = new()
    {
        Slices =
        [
            new(60, 55, 0, 1.3, -0.16), new(150, 75, 30, 2.1, -0.09), new(350, 98, 75, 2.9, 0),
            new(600, 113, 120, 3.1, 0.04), new(900, 122, 165, 2.6, 0.06), new(1150, 126, 205, 1.7, 0.08), new(1350, 127, 240, 0.6, 0.09),
        ],
        Usable = (250, 1280),
        CloudBaseM = 1400,
        DriftMs = 5.2,
    };

    public static ThermalSectionInput Upright { get; } = new()
    {
        Slices = [new(80, 90, 0, 1.8, -0.2), new(700, 240, 0, 4.2, 0.03), new(1800, 320, 0, 3.4, 0.1), new(2700, 330, 0, 0.8, 0.12)],
        Usable = (300, 2450),
        DriftMs = 0.1,
        Unit = HeightUnit.Metres,
    };

    public static ThermalSectionInput Sheared { get; } = Leaning with
    {
        Slices = [.. Leaning.Slices.Select(slice => slice with { AxisM = -4.5 * slice.AxisM })],
        CloudBaseM = null,
    };
}
