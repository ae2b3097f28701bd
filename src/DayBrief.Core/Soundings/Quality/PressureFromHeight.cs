using DayBrief.Soundings.Formats;
using DayBrief.Thermodynamics;

namespace DayBrief.Soundings.Quality;

/// <summary>Gives levels that name only a height their pressure, by the hypsometric equation upwards from the ground.</summary>
internal static class PressureFromHeight
{
    private readonly record struct Place(double PressureHpa, double HeightM, double VirtualKelvins);

    public static void Complete(ReadAscent ascent)
    {
        foreach (var level in ascent.Levels.Where(level => level is { PressureHpa: null, HeightM: null }))
        {
            throw level.At("pressureHpa").Refuse("level-without-place", "the level has neither a pressure nor a height.");
        }

        if (ascent.Levels.Exists(level => level.PressureHpa is null))
        {
            Climb(ascent);
        }
    }

    private static void Climb(ReadAscent ascent)
    {
        var levels = ascent.Levels;
        var place = Ground(ascent);
        for (var i = 0; i < levels.Count; i++)
        {
            var level = levels[i];
            var kelvins = VirtualKelvins(levels, i, place);
            if (level.PressureHpa is { } known)
            {
                var height = level.HeightM ?? (place.HeightM + Hypsometry.ThicknessM(place.PressureHpa, known, (place.VirtualKelvins + kelvins) / 2));
                place = new(known, height, kelvins);
                continue;
            }

            if (i > 0 && level.HeightM <= levels[i - 1].HeightM)
            {
                throw level.At("heightM").Refuse("height-not-rising", $"{level.HeightM:0} m comes after {levels[i - 1].HeightM:0} m. Give the levels from the ground up.");
            }

            var rise = level.HeightM!.Value - place.HeightM;
            var pressure = place.PressureHpa * Math.Exp(-Air.Gravity * rise / (Air.GasConstant * (place.VirtualKelvins + kelvins) / 2));
            levels[i] = level with { PressureHpa = pressure };
            place = new(pressure, level.HeightM.Value, kelvins);
        }

        ascent.Note("pressure-from-height", "Levels without a pressure have been given one from their height and temperature.");
    }

    private static Place Ground(ReadAscent ascent)
    {
        var first = ascent.Levels[0];
        var height = ascent.Source.Elevation?.Metres ?? first.HeightM ?? 0;
        var pressure = ascent.SurfacePressureHpa
            ?? (ascent.QnhHpa is { } qnh ? (double?)StandardAtmosphere.GroundPressureHpa(qnh, height) : null)
            ?? first.PressureHpa;
        if (pressure is null)
        {
            pressure = StandardAtmosphere.PressureHpa(height);
            ascent.Warn(
                "standard-pressure-assumed",
                $"No pressure is given: {pressure:0.0} hPa, the ICAO standard atmosphere at {height:0} m, is taken for the ground. Give QFE or QNH.");
        }

        var celsius = ascent.Levels.Select(level => level.TemperatureC).FirstOrDefault(value => value is not null)
            ?? throw first.At("temperatureC").Refuse("too-few-temperatures", "no level has a temperature.");
        var isFirstAtGround = first.TemperatureC is not null;
        return new(pressure.Value, height, AirColumn.VirtualKelvins(pressure.Value, celsius, isFirstAtGround ? first.DewPointC : null));
    }

    // A level with wind alone has the temperature between its neighbours, or of the one below.
    private static double VirtualKelvins(List<ReadLevel> levels, int i, Place below)
    {
        if (levels[i].TemperatureC is { } celsius)
        {
            return AirColumn.VirtualKelvins(levels[i].PressureHpa ?? below.PressureHpa, celsius, levels[i].DewPointC);
        }

        var above = i + 1 < levels.Count ? levels[i + 1] : null;
        return above is { TemperatureC: { } aboveC, HeightM: { } aboveM } && levels[i].HeightM is { } height && aboveM > below.HeightM
            ? below.VirtualKelvins + ((aboveC + Units.Temperature.ZeroCelsius - below.VirtualKelvins) * (height - below.HeightM) / (aboveM - below.HeightM))
            : below.VirtualKelvins;
    }
}
