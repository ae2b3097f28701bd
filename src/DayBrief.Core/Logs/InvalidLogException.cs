using DayBrief.Texts;

namespace DayBrief.Logs;

/// <summary>A file that holds no flight that can be read.</summary>
public sealed class InvalidLogException(Words words, int? line = null) : Exception((words ?? throw new ArgumentNullException(nameof(words))).ToString())
{
    /// <summary>What is wrong and what to do.</summary>
    public Words Words { get; } = words;

    /// <summary>The line it is about, from 1; null for the whole file.</summary>
    public int? Line { get; } = line;
}
