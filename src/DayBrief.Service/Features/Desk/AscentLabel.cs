using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.Soundings;
using DayBrief.Service.Infrastructure;
using DayBrief.Soundings;

namespace DayBrief.Service.Features.Desk;

/// <summary>Names an ascent as people tell them apart: station, time, age, format, levels, never a hash.</summary>
internal sealed class AscentLabel(Reader reader, DateOnly date, DateTimeOffset now)
{
    public string Of(AscentFacts? facts, AscentOrigin origin, DateTimeOffset? answered = null)
    {
        var came = origin switch
        {
            AscentOrigin.Pasted => reader["the pasted text"],
            AscentOrigin.Typed => reader["the typed levels"],
            AscentOrigin.Fetched => reader["came by itself"],
            _ when facts?.Name is { Length: > 0 } name => name == Keeping.PastedName ? reader["pasted before"] : name == Keeping.TypedName ? reader["typed before"] : name,
            _ => reader["kept before"],
        };
        return facts is null
            ? reader.Say($"{came}: cannot be used as it stands")
            : $"{Of(facts.Source, answered)}, {(origin == AscentOrigin.Typed ? "" : $"{facts.Source.Format}, ")}{reader.Language.Say(facts.Levels, $"{facts.Levels} level", $"{facts.Levels} levels")} ({came})";
    }

    /// <param name="source">Where and when, as the ascent says.</param>
    /// <param name="answered">When, as the instructor says; counts only where the ascent does not.</param>
    public string Of(SoundingSource source, DateTimeOffset? answered = null)
    {
        var station = source.Station is { } named ? reader.Say($"Station {named}") : reader["Station not known"];
        return (source.ValidAt ?? source.DayAndHour?.LatestUpTo(date)) is { } valid
            ? $"{station}, {reader.Language.DateAndTime(valid.ToUniversalTime())} UTC, {Age(valid)}"
            : answered is { } said ? $"{station}, {reader.Language.DateAndTime(said)} UTC {reader["as given here"]}, {Age(said)}"
            : $"{station}, {reader["time not known"]}";
    }

    /// <summary>Today's ascent has an age now; another day's one against the morning of that day.</summary>
    private string Age(DateTimeOffset valid)
    {
        if (LocalClock.DateAt(now, reader.Zone) == date && valid <= now)
            return reader.Say($"{reader.Duration(now - valid)} old");
        var morning = reader.InstantOf(date, new TimeOnly(6, 0));
        if ((valid - morning).Duration() < TimeSpan.FromMinutes(1))
            return reader["06:00 of the day"];
        return valid <= morning
            ? reader.Say($"{reader.Duration(morning - valid)} before 06:00 of the day")
            : reader.Say($"{reader.Duration(valid - morning)} after 06:00 of the day");
    }
}
