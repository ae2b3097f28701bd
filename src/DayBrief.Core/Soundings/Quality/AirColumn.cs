using DayBrief.Soundings.Formats;
using DayBrief.Thermodynamics;

namespace DayBrief.Soundings.Quality;

/// <summary>One level of the column: pressure, temperature, dew point where known, height above the lowest temperature.</summary>
internal readonly record struct ColumnLevel(double PressureHpa, double TemperatureC, double? DewPointC, double HeightAglM);

/// <summary>The levels that have a temperature, with heights above the lowest of them by the hypsometric equation, for
/// the checks that need to know how thick a layer is.</summary>
internal static class AirColumn
{
    public static List<ColumnLevel> Of(List<ReadLevel> levels)
    {
        var column = new List<ColumnLevel>(levels.Count);
        foreach (var level in levels)
        {
            if (level.TemperatureC is { } celsius)
            {
                var below = column.Count > 0 ? column[^1] : (ColumnLevel?)null;
                var height = below is { } b ? b.HeightAglM + ThicknessM(b.PressureHpa, b.TemperatureC, b.DewPointC, level.PressureHpa!.Value, celsius, level.DewPointC) : 0;
                column.Add(new(level.PressureHpa!.Value, celsius, level.DewPointC, height));
            }
        }

        return column;
    }

    /// <summary>Thickness with the mean of both virtual temperatures [AMS].</summary>
    public static double ThicknessM(double lowerHpa, double lowerC, double? lowerDewPointC, double upperHpa, double upperC, double? upperDewPointC) =>
        Hypsometry.ThicknessM(lowerHpa, upperHpa, (VirtualKelvins(lowerHpa, lowerC, lowerDewPointC) + VirtualKelvins(upperHpa, upperC, upperDewPointC)) / 2);

    /// <summary>The temperature itself where the dew point is not known.</summary>
    public static double VirtualKelvins(double pressureHpa, double celsius, double? dewPointC)
    {
        var kelvins = celsius + Units.Temperature.ZeroCelsius;
        return dewPointC is { } dewPoint && Saturation.OverWaterHpa(dewPoint) < pressureHpa / 2
            ? Humidity.VirtualKelvins(kelvins, Humidity.MixingRatioKgKg(dewPoint, pressureHpa))
            : kelvins;
    }
}
