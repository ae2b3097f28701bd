using DayBrief.Days;

namespace DayBrief.Service.Features.Briefs;

/// <summary>What kind of thermals, in a line.</summary>
internal static class ThermalWords
{
    /// <summary>From when to when, and the best of it; null without usable thermals.</summary>
    public static string? Window(Brief brief, Reader reader) =>
        brief.Day.Times is { FirstUsable: { } first, BestFrom: { } from, BestTo: { } to, Last: { } last } times
            ? times.Decline is { } decline
                ? reader.Say($"First usable {reader.Time(first)}, best {reader.Time(from)} to {reader.Time(to)}, weaker from {reader.Time(decline)}, last {reader.Time(last)}.")
                : reader.Say($"First usable {reader.Time(first)}, best {reader.Time(from)} to {reader.Time(to)}, last {reader.Time(last)}.")
            : null;

    public static string Kind(Brief brief, Reader reader)
    {
        var type = brief.Day.ThermalType;
        var words = type.Kind switch
        {
            ThermalKind.ShortLived => reader["Short-lived thermals: strong while the sun feeds them, gone soon after it stops."],
            ThermalKind.Broad => reader["Broad thermals of a deep layer: wide, lasting, worth a search."],
            _ => reader["No usable thermals."],
        };
        string[] additions =
        [
            .. type.Leaning ? [reader["leaning"]] : Array.Empty<string>(),
            .. type.InStreets ? [reader["in streets"]] : Array.Empty<string>(),
            .. type.CappedLow ? [reader["capped low"]] : Array.Empty<string>(),
        ];
        return additions.Length > 0 ? $"{words} {reader.Say($"Today also {string.Join(", ", additions)}.")}" : words;
    }
}

/// <summary>Who made the brief, and when.</summary>
internal static class PreparedWords
{
    public static string Of(MadeBrief made, DateTimeOffset now, Reader reader)
    {
        if (made.Standing?.Revision is { } revision)
        {
            return reader.Say($"Revision {revision.Number}, signed {reader.DateAndTime(revision.SignedAt)} by {revision.SignedBy}")
                + (now > revision.SignedAt.AddMinutes(1) ? reader.Say($", {reader.Duration(now - revision.SignedAt)} ago.") : ".");
        }

        if (made.Brief.PreparedAt is not { } prepared)
            return made.Brief.PreparedBy is { } name ? reader.Say($"Prepared by {name}; when is not known.") : reader["When it was prepared is not known."];
        var at = reader.DateAndTime(prepared);
        if (made.Inputs.Demonstration)
            return reader.Say($"Prepared for demonstration, {at}.");
        return made.Brief.PreparedBy is not { } by ? reader.Say($"Prepared {at}.") : reader.Say($"Prepared by {by}, {at}.");
    }
}

/// <summary>Where the ascent comes from, how old and how far.</summary>
internal static class AscentWords
{
    public static string Of(MadeBrief made, DateTimeOffset now, Reader reader)
    {
        var (brief, source) = (made.Brief, made.Brief.Ascent.Sounding.Source);
        var where = source.Station is { } station ? reader.Say($"Station {station}") : reader["Station not known"];
        var when = brief.AscentValidAt is { } valid
            ? $"{reader.DateAndTime(valid)}{(brief.PreparedAt is null ? "" : $", {Age(brief, now, made.Inputs.Demonstration, reader)}")}"
            : reader["time not known"];
        var far = brief.AscentDistanceKm is { } km ? reader.Say($"{Math.Round(km):0} km from the field") : reader["distance not known"];
        var launched = source.LaunchTime is { } launch ? reader.Say($"; launched {launch:HH:mm} UTC") : "";
        return $"{where}, {when}{launched}, {far}. {reader.Say($"Read as {source.Format}.")}";
    }

    private static string Age(Brief brief, DateTimeOffset now, bool demonstration, Reader reader) => demonstration
        ? reader.Say($"{reader.Duration(brief.AscentAgeAt(brief.PreparedAt) ?? default)} old when prepared")
        : reader.Say($"now {reader.Duration(brief.AscentAgeAt(now) ?? default)} old");
}

/// <summary>How sure the figures are and what would change them.</summary>
internal static class SureWords
{
    public static IEnumerable<string> Of(Brief brief, Reader reader)
    {
        var day = brief.Day;
        foreach (var matters in day.WhatMatters)
        {
            var words = reader.Say(matters.Words);
            yield return $"{char.ToUpperInvariant(words[0])}{words[1..]}.";
        }
        if (day.NoUsableThermalProbability is { } none)
            yield return reader.Say($"Chance that no usable thermal comes: {Percent(none, reader)}. Ranges hold eight cases of ten, from {day.Assumptions.EnsembleSize} courses of the day.");
    }

    private static string Percent(double share, Reader reader) => share switch
    {
        < 0.01 => reader["less than 1 %"],
        > 0.99 => reader["more than 99 %"],
        _ => reader.Say($"{Math.Round(100 * share):0} %"),
    };
}
