using DayBrief.Texts;

namespace DayBrief.Soundings.Formats;

/// <summary>One ascent as a format reports it: levels with their origin, not checked and not merged yet.</summary>
internal sealed class ReadAscent
{
    public required SoundingSource Source { get; set; }

    /// <summary>Levels from the ground up, as given.</summary>
    public List<ReadLevel> Levels { get; init; } = [];

    public List<HeightWind> WindsByHeight { get; init; } = [];

    public RemarkList Remarks { get; } = new();

    /// <summary>Pressure at the launch site, where the input states it apart from the levels.</summary>
    public double? SurfacePressureHpa { get; set; }

    /// <summary>Whether every level where the temperature leaves a straight line is among the levels (FM 35 part B).</summary>
    public bool TurnsReported { get; set; }

    /// <summary>A profile computed by a model, one of several hours.</summary>
    public bool IsForecast { get; set; }

    /// <summary>Altimeter setting for sea level, where the input states it.</summary>
    public double? QnhHpa { get; set; }

    public void Add(ReadLevel level)
    {
        if (Levels.Count == SoundingLimits.Levels)
        {
            throw level.Origin.Refuse("too-many-levels", $"More than {SoundingLimits.Levels:N0} levels. Give one ascent.");
        }

        Levels.Add(level);
    }

    public void Warn(string code, Words message) => Remarks.Add(Severity.Warning, code, message);

    public void Note(string code, Words message) => Remarks.Add(Severity.Info, code, message);
}
