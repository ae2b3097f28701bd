using DayBrief.Units;

namespace DayBrief.Soundings.Formats.Temp;

/// <summary>One part while it is read: a place in its groups, and what every kind of part does in the same way.</summary>
internal abstract class TempReading(TempPart part, TempHeader header, TempAscent ascent)
{
    protected TempPart Part { get; } = part;

    protected TempHeader Header { get; } = header;

    protected TempAscent Ascent { get; } = ascent;

    protected int At { get; set; } = header.First;

    protected bool Done => At >= Part.Groups.Count;

    protected TempGroup Current => Part.Groups[At];

    public void Run()
    {
        while (!Done)
        {
            if (!Current.IsWhole)
            {
                Broken(Current);
                At++;
            }
            else if (Current.OpensSection)
            {
                TempSections.Skip(Part, At, Ascent, out var next);
                At = next;
            }
            else
            {
                Element();
            }
        }

        if (!Part.Ended && Part.Groups.Count > Header.First)
        {
            EndUnmarked(Part.Groups[^1]);
        }
        else if (!Part.Ended)
        {
            Ascent.CutAt(Part.Groups[^1].Origin, Part.Name);
        }
    }

    /// <summary>Reads what begins at the current group, and moves on by at least one group.</summary>
    protected abstract void Element();

    /// <summary>The part ends with the text, without an end sign.</summary>
    protected virtual void EndUnmarked(TempGroup last) => Ascent.Read.Note(
        "end-sign-missing", $"{last.Origin.Words}: {Part.Name} ends without \"=\"; if it was cut here, what came after is missing.");

    protected TempGroup? Ahead(int groups) => At + groups < Part.Groups.Count ? Part.Groups[At + groups] : null;

    /// <summary>The message ends before the element that begins at a group is complete.</summary>
    protected void Cut(TempGroup group)
    {
        Ascent.CutAt(group.Origin, Part.Name);
        At = Part.Groups.Count;
    }

    protected void Broken(TempGroup group)
    {
        if (At == Part.Groups.Count - 1 && !Part.Ended)
        {
            Ascent.CutAt(group.Origin, Part.Name);
        }
        else
        {
            Ascent.Unreadable(group, "this is no group of five figures; it is left out.");
        }
    }

    protected ReadLevel WithTemperature(ReadLevel level, TempGroup group)
    {
        if (group.Number(3, 2) is >= 51 and <= 55)
        {
            Ascent.Unreadable(group, "a dew-point depression of 51 to 55 is not in the code; the dew point is left out.");
        }

        return level with { TemperatureC = TempElements.Temperature(group), DewPointC = TempElements.DewPoint(group) };
    }

    protected ReadLevel WithWind(ReadLevel level, TempGroup group)
    {
        if (TempElements.Wind(group) is not { } wind)
        {
            if (!group.IsWhole)
            {
                Broken(group);
            }
            else if (!group.Text.Contains('/', StringComparison.Ordinal))
            {
                Ascent.Unreadable(group, "this wind has no possible direction; it is left out.");
            }

            return level;
        }

        return level with { WindFromDeg = wind.FromDeg, WindMs = MetresPerSecond(wind.Speed) };
    }

    protected double MetresPerSecond(int speed) => Header.InKnots ? speed * Speed.MetresPerSecondPerKnot : speed;

    protected void Add(ReadLevel level)
    {
        if (level is { HasValue: true, PressureHpa: > 0 })
        {
            Ascent.Read.Add(level);
        }
    }
}
