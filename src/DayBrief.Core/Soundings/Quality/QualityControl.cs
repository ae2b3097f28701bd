using DayBrief.Soundings.Formats;
using DayBrief.Units;

namespace DayBrief.Soundings.Quality;

/// <summary>Checks what a format reported, merges levels of one pressure and makes the ascent; every finding says what,
/// where and why.</summary>
internal static class QualityControl
{
    /// <exception cref="InvalidSoundingException">A finding that no warning can carry.</exception>
    public static Sounding Pass(ReadAscent ascent)
    {
        PossibleValues.Check(ascent);
        BelowGround.Clear(ascent);
        PressureFromHeight.Complete(ascent);
        ascent.Levels.RemoveAll(level => !level.HasValue);
        FallingPressure.Check(ascent);
        DewPointCheck.Check(ascent);
        var levels = LevelMerge.Merge(ascent);
        EnoughLevels(levels);
        levels = Thinning.Thin(levels, ascent.Remarks);
        var column = AirColumn.Of(levels);
        ImplausibleGround.Check(column, ascent.Remarks);
        SuperadiabaticLayers.Check(column, ascent.Remarks);
        Gaps.Check(column, ascent.TurnsReported, ascent.Remarks);
        HeightCheck.Check(levels, ascent.Remarks);
        HeightCheck.Ground(levels, ascent.Source.Elevation?.Metres, ascent.Remarks);
        LowTop.Check(column, ascent.Remarks);
        BalloonDrift.Check(levels, ascent.Source.Position, ascent.Remarks);
        MissingFacts.Check(ascent);
        return new()
        {
            Source = ascent.Source,
            Levels = [.. levels.Select(Level)],
            WindsByHeight = [.. ascent.WindsByHeight],
            Remarks = [.. ascent.Remarks.All()],
        };
    }

    private static void EnoughLevels(List<ReadLevel> levels)
    {
        var temperatures = levels.Count(level => level.TemperatureC is not null);
        if (temperatures == 0 && levels.Exists(level => level.WindMs is not null))
        {
            throw new InvalidSoundingException(new Refusal(
                "wind-only", "The input holds winds and no temperature. Give the temperatures of the same ascent with it."));
        }

        if (levels.Count < SoundingLimits.FewestLevels || temperatures < SoundingLimits.FewestTemperatures)
        {
            throw new InvalidSoundingException(new Refusal(
                "too-few-levels",
                $"The ascent has {levels.Count} levels, {temperatures} of them with a temperature. At least {SoundingLimits.FewestLevels} levels are needed, {SoundingLimits.FewestTemperatures} of them with a temperature."));
        }
    }

    internal static SoundingLevel Level(ReadLevel level) => new()
    {
        Pressure = Pressure.FromHectopascals(level.PressureHpa!.Value),
        Height = level.HeightM is { } metres ? Altitude.FromMetres(metres) : null,
        Temperature = level.TemperatureC is { } celsius ? Temperature.FromCelsius(celsius) : null,
        DewPoint = level.DewPointC is { } dewPoint ? Temperature.FromCelsius(dewPoint) : null,
        Wind = level.WindMs is { } ms && level.WindFromDeg is { } degrees ? Wind.From(degrees, Speed.FromMetresPerSecond(ms)) : null,
        SinceLaunch = level.SinceLaunch,
        Position = level.Position,
    };
}
