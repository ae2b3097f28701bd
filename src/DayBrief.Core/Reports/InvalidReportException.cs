using DayBrief.Texts;

namespace DayBrief.Reports;

/// <summary>A text that is no METAR, SPECI or TAF, or one without a station or time.</summary>
/// <param name="words">What is wrong and what to do.</param>
/// <param name="line">Line of the text, from 1.</param>
/// <param name="group">The group as written.</param>
public sealed class InvalidReportException(Words words, int? line, string? group) : Exception(words.ToString())
{
    /// <summary>What is wrong and what to do, to be said in a language.</summary>
    public Words Words { get; } = words;

    /// <summary>Line of the text, from 1.</summary>
    public int? Line { get; } = line;

    /// <summary>The group as written.</summary>
    public string? Group { get; } = group;
}
