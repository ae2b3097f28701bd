using DayBrief.Soundings;
using DayBrief.Units;

namespace DayBrief.Service.Charts;

/// <summary>Ascents for looking at charts. Invented; none was measured.</summary>
internal static class InventedAscents
{
    /// <summary>A clear summer morning: ground inversion, a second one aloft, dry air above.</summary>
    public static SoundingAnalysis SummerMorning => Of(
        [
            (1002, 11.2, 9.4, 140, 3), (995, 13.6, 10.2, 150, 6), (975, 15.0, 9.6, 170, 11), (950, 13.9, 8.7, 190, 14),
            (925, 12.1, 7.9, 200, 15), (900, 10.2, 6.8, 210, 16), (850, 6.4, 3.9, 220, 18), (800, 2.4, -0.5, 230, 21),
            (770, 0.6, -4.0, 235, 22), (755, 2.2, -12.0, 240, 24), (700, -0.9, -17.0, 245, 28), (650, -5.0, -20.0, 250, 33),
            (600, -9.6, -24.0, 255, 38), (500, -19.0, -31.0, 260, 52),
        ],
        120);

    /// <summary>A hot dry day over high ground: deep, no cloud.</summary>
    public static SoundingAnalysis HighDesert => Of(
        [
            (880, 14.0, 1.0, 90, 4), (870, 18.5, 0.5, 110, 6), (850, 19.4, -0.5, 150, 8), (800, 15.6, -3.0, 200, 10),
            (700, 5.9, -8.0, 230, 14), (600, -4.4, -14.0, 240, 22), (500, -15.5, -22.0, 250, 35), (450, -21.0, -30.0, 255, 46),
        ],
        1250);

    /// <summary>Cold and stable, no dew points, no winds.</summary>
    public static SoundingAnalysis WinterStable => Of(
        [(1018, -6.0, null, null, 0), (1000, -3.5, null, null, 0), (925, 0.5, null, null, 0), (850, 0.0, null, null, 0), (700, -8.0, null, null, 0)],
        40);

    private static SoundingAnalysis Of((double Hpa, double T, double? Dew, double? From, double Knots)[] levels, double elevationM) =>
        SoundingAnalysis.Of(new Sounding
        {
            Source = new SoundingSource { Format = "invented", Elevation = Altitude.FromMetres(elevationM) },
            Levels = [.. levels.Select(level => new SoundingLevel
            {
                Pressure = Pressure.FromHectopascals(level.Hpa),
                Temperature = Temperature.FromCelsius(level.T),
                DewPoint = level.Dew is { } dew ? Temperature.FromCelsius(dew) : null,
                Wind = level.From is { } from ? Wind.From(from, Speed.FromKnots(level.Knots)) : null,
            })],
        });
}
