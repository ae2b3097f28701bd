namespace DayBrief.Soundings.Formats.Temp;

/// <summary>One part of a report: its name, its groups, and whether its end was seen.</summary>
internal sealed class TempPart(string name, int line)
{
    /// <summary>MiMiMjMj, such as TTAA or PPBB.</summary>
    public string Name { get; } = name;

    public int Line { get; } = line;

    public List<TempGroup> Groups { get; } = [];

    /// <summary>Ended by "=", by the next part or by a bulletin's end; otherwise by the end of the text.</summary>
    public bool Ended { get; set; }

    public char Letter => Name[^1];

    public bool IsPilot => Name[0] is 'P' or 'Q' or 'E';

    /// <summary>Parts C and D give pressures in tenths of hPa where they are not standard levels.</summary>
    public bool IsUpper => Letter is 'C' or 'D';
}
