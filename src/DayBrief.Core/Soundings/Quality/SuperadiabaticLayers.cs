using DayBrief.Soundings.Formats;
using DayBrief.Texts;
using DayBrief.Thermodynamics;

namespace DayBrief.Soundings.Quality;

/// <summary>Layers that cool faster than a dry adiabat: real only next to heated ground; elsewhere a wet sensor above a
/// cloud top or a wrong value.</summary>
internal static class SuperadiabaticLayers
{
    /// <summary>Smaller falls of potential temperature change nothing that an instructor would see. Common practice.</summary>
    private const double TrivialKelvins = 0.5;

    /// <summary>A superadiabatic layer on heated ground is rarely deeper. Common practice, no source.</summary>
    private const double ShallowM = 300;

    /// <summary>From this fall of potential temperature on, a wrong value is likelier than the sun.</summary>
    /// <remarks>The profile of [Dyer1974] from 2 to 100 m over ground that gives 400 W/m² to a light wind (friction velocity
    /// 0.2 m/s) falls by 2 K; three times that is asked about, so that a screen on hot ground is not.</remarks>
    private const double AskedKelvins = 6;

    public static void Check(IReadOnlyList<ColumnLevel> column, RemarkList remarks)
    {
        for (var i = 1; i < column.Count; i++)
        {
            var bottom = i - 1;
            while (i < column.Count && Theta(column[i]) < Theta(column[i - 1]))
            {
                i++;
            }

            var top = i - 1;
            if (top > bottom && Theta(column[bottom]) - Theta(column[top]) > Math.Max(TrivialKelvins, RoundingKelvins(column[top])))
            {
                Report(column[bottom], column[top], bottom == 0, remarks);
            }
        }
    }

    private static void Report(ColumnLevel bottom, ColumnLevel top, bool isAtGround, RemarkList remarks)
    {
        var depth = top.HeightAglM - bottom.HeightAglM;
        var lapse = 1000 * (bottom.TemperatureC - top.TemperatureC) / Math.Max(depth, 1);
        if (Theta(bottom) - Theta(top) > AskedKelvins)
        {
            remarks.Ask(
                "superadiabatic-layer",
                $"From {bottom.PressureHpa:0.#} to {top.PressureHpa:0.#} hPa it cools from {bottom.TemperatureC:0.0} to {top.TemperatureC:0.0} °C, {lapse:0.0} °C/km: far more than heated ground or a wet sensor makes. Are both values right?",
                bottom.PressureHpa);
            return;
        }

        var shallow = isAtGround && depth <= ShallowM;
        var meaning = shallow ? Words.Of("usual over heated ground")
            : isAtGround ? Words.Of("heated ground, but deeper than usual; check it")
            : Words.Of("a wet sensor above cloud, or a wrong value; check it");
        remarks.Add(
            shallow ? Severity.Info : Severity.Warning,
            "superadiabatic-layer",
            $"{bottom.PressureHpa:0.#} to {top.PressureHpa:0.#} hPa cools by {lapse:0.0} °C/km, more than a dry adiabat ({meaning}).",
            bottom.PressureHpa);
    }

    // Both temperatures rounded to 0.1 °C, both pressures to 1 hPa: what is left of the difference says nothing.
    private static double RoundingKelvins(ColumnLevel level)
    {
        var theta = Theta(level);
        return (0.1 * theta / (level.TemperatureC + Units.Temperature.ZeroCelsius)) + (Air.Kappa * theta / level.PressureHpa);
    }

    private static double Theta(ColumnLevel level) =>
        (level.TemperatureC + Units.Temperature.ZeroCelsius) * Math.Pow(1000 / level.PressureHpa, Air.Kappa);
}
