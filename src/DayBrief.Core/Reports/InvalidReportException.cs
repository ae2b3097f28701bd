namespace DayBrief.Reports;

/// <summary>A text that is no METAR, SPECI or TAF, or one without a station or time.</summary>
/// <param name="message">What is wrong and what to do.</param>
/// <param name="line">Line of the text, from 1.</param>
/// <param name="group">The group as written.</param>
public sealed class InvalidReportException(string message, int? line, string? group) : Exception(message)
{
    /// <summary>Line of the text, from 1.</summary>
    public int? Line { get; } = line;

    /// <summary>The group as written.</summary>
    public string? Group { get; } = group;
}
