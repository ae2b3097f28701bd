using System.Globalization;
using System.Text;
using DayBrief.Thermodynamics;
using DayBrief.Units;

namespace DayBrief.Service.Charts;

/// <summary>What a tephigram shows, in words.</summary>
internal static class TephigramWords
{
    public static string Title(TephigramInput input) =>
        input.Analysis.Sounding.Source.Station is { } station ? $"Tephigram of {station}" : "Tephigram";

    public static string Describe(TephigramInput input)
    {
        var profile = input.Profile;
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"Temperature and dew point by height. At the ground, {profile.SurfacePressure.Hectopascals:0} hPa: {N(profile.SurfaceTemperature.Celsius)} °C");
        text.Append(profile.SurfaceDewPoint is { } dewPoint ? $", dew point {N(dewPoint.Celsius)} °C." : ", dew point not known.");
        foreach (var found in input.Analysis.Inversions.Where(found => found.Base.Metres < 4000 && found.Strength.Kelvins >= 0.5).Take(3))
            text.Append(CultureInfo.InvariantCulture, $" Inversion of {found.Strength.Kelvins:0.#} °C from {From(input, found.Base)} to {input.In.Text(found.Top.Metres)}.");
        foreach (var stage in input.Stages)
            text.Append(' ').Append(Stage(input, stage));
        text.Append(Cloud(input));
        return text.Append(" Heights are above the field.").ToString();
    }

    private static string Stage(TephigramInput input, HeatingStage stage)
    {
        var path = HeatingPath.Of(input.Profile, stage.Surface, input.SurfaceDewPoint);
        var start = $"{stage.Label}, {N(stage.Surface.Celsius)} °C at the surface:";
        if (path.Top is not { } top || input.Profile.HeightAt(top) is not { } height)
        {
            return stage.Surface < input.Profile.SurfaceTemperature
                ? $"{start} colder than the ascent, no thermals."
                : $"{start} thermals rise beyond the top of the ascent.";
        }

        return path.Condenses
            ? $"{start} cloud base {input.In.Text(height.Metres)}."
            : $"{start} dry thermals to {input.In.Text(height.Metres)}.";
    }

    private static string Cloud(TephigramInput input)
    {
        if (input.SurfaceDewPoint is not { } dewPoint)
            return "";
        var grams = 1000 * Humidity.Of(dewPoint, input.Profile.SurfacePressure).KilogramsPerKilogram;
        var moisture = $" Moisture of the rising air {grams.ToString("0.0", CultureInfo.InvariantCulture)} g/kg.";
        return TephigramHeating.Level(input, dewPoint) is { } level
            ? $"{moisture} First cumulus from {N(level.ConvectiveTemperature.Celsius)} °C at the surface, base {input.In.Text(level.Height.Metres)}."
            : moisture;
    }

    private static string From(TephigramInput input, Height height) =>
        height.Metres < 1 ? "the ground" : input.In.Text(height.Metres);

    private static string N(double value) =>
        value.ToString("0.#", CultureInfo.InvariantCulture).Replace('-', '−');
}
