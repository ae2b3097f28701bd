namespace DayBrief.Soundings.Formats.Temp;

/// <summary>WMO FM 35 TEMP with the FM 32 PILOT parts of the same ascent.</summary>
internal static class TempReport
{
    public static SoundingFormat Format { get; } = new(
        new(TempAscent.FormatName, "WMO-No. 306, FM 35/36/38 TEMP (land, ship, mobile) and FM 32/33/34 PILOT", "TTAA 72121 72235 99000 24416 18006 …"),
        input => input.Plain is { } text && TempParts.Any(text),
        input => Read(input.Plain!));

    private static List<ReadAscent> Read(string text)
    {
        var ascents = new OrderedDictionary<(string?, DayAndHour?), TempAscent>();
        var parts = TempParts.Split(text);
        foreach (var (part, header) in Latest(parts))
        {
            var key = (header.Station, header.DayAndHour);
            if (!ascents.TryGetValue(key, out var ascent))
            {
                ascents.Add(key, ascent = new(header.Station, header.DayAndHour));
            }

            Take(part, header, ascent);
        }

        // The last part may be cut before its date and station.
        if (parts is [.., { Ended: false } last] && TempHeader.Read(last) is null && ascents.Count > 0)
        {
            ascents.GetAt(ascents.Count - 1).Value.CutAt(new(last.Line, last.Name), last.Name);
        }

        return Usable(parts, ascents.Values);
    }

    private static List<ReadAscent> Usable(List<TempPart> parts, IReadOnlyCollection<TempAscent> ascents)
    {
        var usable = ascents.Where(ascent => ascent.HasTemperatures).ToList();
        if (usable.Count == 0)
        {
            throw Nothing(parts, ascents);
        }

        foreach (var winds in ascents.Where(ascent => !ascent.HasTemperatures))
        {
            usable.Find(ascent => ascent.IsNear(winds))?.Lend(winds);
        }

        foreach (var lost in parts.Where(part => TempHeader.Read(part) is null && part.Groups.Count > 1 && !part.Groups.Exists(group => group.Text == "NIL")))
            usable[0].Read.Warn("part-unreadable", $"{new Origin(lost.Line, lost.Name).Words}: its date or station cannot be read; the whole part is left out.");
        return [.. usable.Select(ascent => ascent.Close())];
    }

    private static void Take(TempPart part, TempHeader header, TempAscent ascent)
    {
        ascent.Parts.Add(part.Name);
        ascent.Place(header);
        TempReading reading = (part.IsPilot, part.Letter) switch
        {
            (false, 'A' or 'C') => new StandardPart(part, header, ascent),
            (false, _) => new SignificantPart(part, header, ascent),
            (true, 'A' or 'C') => new PilotStandardPart(part, header, ascent),
            _ => new PilotHeightsPart(part, header, ascent),
        };
        reading.Run();
    }

    // A part that comes twice for one ascent is a repetition or a correction; the last one holds.
    private static List<(TempPart Part, TempHeader Header)> Latest(List<TempPart> parts)
    {
        var latest = new OrderedDictionary<(string, string?, DayAndHour?), (TempPart, TempHeader)>();
        foreach (var part in parts)
        {
            if (TempHeader.Read(part) is { } header)
            {
                latest[(part.Name, header.Station, header.DayAndHour)] = (part, header);
            }
        }

        return [.. latest.Values];
    }

    private static InvalidSoundingException Nothing(List<TempPart> parts, IReadOnlyCollection<TempAscent> ascents)
    {
        if (ascents.FirstOrDefault(ascent => ascent.Cut is not null)?.Cut is { } cut)
        {
            return cut.Refuse("truncated", "the message is cut here, before a usable ascent. Give the whole message.");
        }

        if (parts.Count == 0)
        {
            return new Origin(1).Refuse("truncated", "the report has no level. Give the whole message.");
        }

        var part = parts[0];
        if (ascents.Any(ascent => ascent.Read.Levels.Count > 0 || ascent.Read.WindsByHeight.Count > 0))
        {
            return new Origin(part.Line, part.Name).Refuse("wind-only", "the report holds winds and no temperature. Give the TEMP report of the same ascent with it.");
        }

        var last = part.Groups.Count > 0 ? part.Groups[^1].Origin : new Origin(part.Line, part.Name);
        return part.Groups.Exists(group => group.Text == "NIL")
            ? last.Refuse("nil-report", "the station sent NIL: no ascent was made or it failed.")
            : last.Refuse("truncated", "the report has no level. Give the whole message.");
    }
}
