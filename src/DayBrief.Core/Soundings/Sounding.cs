using System.Collections.Immutable;

namespace DayBrief.Soundings;

/// <summary>One ascent, highest pressure first, pressure strictly falling. Always valid: at least two levels with a
/// temperature, every value physically possible.</summary>
public sealed class Sounding
{
    /// <summary>Where it comes from.</summary>
    public required SoundingSource Source { get; init; }

    /// <summary>All reported levels, also those with wind or height only and those below ground.</summary>
    /// <exception cref="InvalidSoundingException">Pressure does not fall, or fewer than two temperatures.</exception>
    public required ImmutableArray<SoundingLevel> Levels
    {
        get;
        init => field = Descending(value);
    }

    /// <summary>Winds reported by height, lowest first; kept apart because they have no pressure of their own.</summary>
    public ImmutableArray<HeightWind> WindsByHeight { get; init; } = [];

    /// <summary>What reading and checking it found.</summary>
    public ImmutableArray<Remark> Remarks { get; init; } = [];

    /// <summary>The lowest level with a temperature: the ground.</summary>
    public SoundingLevel Surface => Levels.First(level => level.Temperature is not null);

    /// <summary>The same ascent with other source facts.</summary>
    public Sounding With(SoundingSource source) =>
        new() { Source = source, Levels = Levels, WindsByHeight = WindsByHeight, Remarks = Remarks };

    /// <summary>The same ascent with further remarks.</summary>
    public Sounding With(IEnumerable<Remark> further) =>
        new() { Source = Source, Levels = Levels, WindsByHeight = WindsByHeight, Remarks = [.. Remarks, .. further] };

    private static ImmutableArray<SoundingLevel> Descending(ImmutableArray<SoundingLevel> levels)
    {
        for (var i = 1; i < levels.Length; i++)
        {
            if (levels[i].Pressure >= levels[i - 1].Pressure)
            {
                throw new InvalidSoundingException(new Refusal(
                    "pressure-not-falling",
                    $"Level {i + 1} ({levels[i].Pressure.Hectopascals:0.#} hPa) is not above level {i} ({levels[i - 1].Pressure.Hectopascals:0.#} hPa). Give the levels from the ground up.")
                { Level = levels[i].Pressure });
            }
        }

        return levels.Count(level => level.Temperature is not null) >= 2
            ? levels
            : throw new InvalidSoundingException(new Refusal(
                "too-few-temperatures", "An ascent needs a temperature on at least two levels."));
    }
}
