using DayBrief.Thermodynamics;
using DayBrief.Units;

namespace DayBrief.Service.Charts;

/// <summary>What a tephigram shows, in words.</summary>
internal static class TephigramWords
{
    public static string Title(TephigramInput input) => input.Analysis.Sounding.Source.Station is { } station
        ? input.In.Say($"Tephigram of {station}")
        : input.In["Tephigram"];

    public static string Describe(TephigramInput input) => string.Join(' ', Sentences(input));

    private static IEnumerable<string> Sentences(TephigramInput input)
    {
        var (say, profile) = (input.In, input.Profile);
        var (pressure, temperature) = (profile.SurfacePressure.Hectopascals, say.Celsius(profile.SurfaceTemperature.Celsius));
        yield return say["Temperature and dew point by height."];
        yield return profile.SurfaceDewPoint is { } dewPoint
            ? say.Say($"At the ground, {pressure:0} hPa: {temperature}, dew point {say.Celsius(dewPoint.Celsius)}.")
            : say.Say($"At the ground, {pressure:0} hPa: {temperature}, dew point not known.");
        foreach (var found in input.Analysis.Inversions.Where(found => found.Base.Metres < 4000 && found.Strength.Kelvins >= 0.5).Take(3))
            yield return say.Say($"Inversion of {say.Kelvins(found.Strength.Kelvins)} from {From(input, found.Base)} to {say.Text(input.AboveField(found.Top.Metres))}.");
        foreach (var stage in input.Stages)
            yield return Stage(input, stage);
        if (input.Stages.Any(stage => stage.ScreenC > stage.Surface.Celsius))
            yield return say["Temperatures are those of a thermometer in its screen; the adiabats start at the air above it, a little cooler."];
        foreach (var sentence in Cloud(input))
            yield return sentence;
        yield return say["Heights are above the field."];
    }

    private static string Stage(TephigramInput input, HeatingStage stage)
    {
        var say = input.In;
        var path = HeatingPath.Of(input.Profile, stage.Surface, input.SurfaceDewPoint);
        var start = say.Say($"{stage.Label}, {say.Celsius(stage.ToldC)} at the surface:");
        if (path.Top is not { } top || input.Profile.HeightAt(top) is not { } height)
        {
            return stage.Surface < input.Profile.SurfaceTemperature
                ? $"{start} {say["colder than the ascent, no thermals."]}"
                : $"{start} {say["thermals rise beyond the top of the ascent."]}";
        }

        return path.Condenses
            ? $"{start} {say.Say($"cloud base {say.Text(input.AboveField(height.Metres))}. [after a colon]")}"
            : $"{start} {say.Say($"dry thermals to {say.Text(input.AboveField(height.Metres))}.")}";
    }

    private static IEnumerable<string> Cloud(TephigramInput input)
    {
        if (input.SurfaceDewPoint is not { } dewPoint)
            yield break;
        var say = input.In;
        var grams = 1000 * Humidity.Of(dewPoint, input.Profile.SurfacePressure).KilogramsPerKilogram;
        yield return say.Say($"Moisture of the rising air {grams:0.0} g/kg.");
        if (TephigramHeating.Level(input, dewPoint) is { } level)
            yield return say.Say($"First cumulus from {say.Celsius(level.ConvectiveTemperature.Celsius)} at the surface, base {say.Text(input.AboveField(level.Height.Metres))}.");
    }

    private static string From(TephigramInput input, Height height) =>
        height.Metres < 1 ? input.In["the ground"] : input.In.Text(input.AboveField(height.Metres));
}
