using DayBrief.Days;

namespace DayBrief.Service.Features.Briefs;

/// <summary>What kind of thermals, in a line.</summary>
internal static class ThermalWords
{
    /// <summary>From when to when, and the best of it; null without usable thermals.</summary>
    public static string? Window(Brief brief, Reader reader) =>
        brief.Day.Times is { FirstUsable: { } first, BestFrom: { } from, BestTo: { } to, Last: { } last } times
            ? $"First usable {reader.Time(first)}, best {reader.Time(from)} to {reader.Time(to)}"
                + (times.Decline is { } decline ? $", weaker from {reader.Time(decline)}" : "")
                + $", last {reader.Time(last)}."
            : null;

    public static string Kind(Brief brief)
    {
        var type = brief.Day.ThermalType;
        var words = type.Kind switch
        {
            ThermalKind.ShortLived => "Short-lived thermals: strong while the sun feeds them, gone soon after it stops.",
            ThermalKind.Broad => "Broad thermals of a deep layer: wide, lasting, worth a search.",
            _ => "No usable thermals.",
        };
        string[] additions =
        [
            .. type.Leaning ? ["leaning"] : Array.Empty<string>(),
            .. type.InStreets ? ["in streets"] : Array.Empty<string>(),
            .. type.CappedLow ? ["capped low"] : Array.Empty<string>(),
        ];
        return additions.Length > 0 ? $"{words} Today also {string.Join(", ", additions)}." : words;
    }
}

/// <summary>Where the ascent comes from, how old and how far.</summary>
internal static class AscentWords
{
    public static string Of(MadeBrief made, DateTimeOffset now, Reader reader)
    {
        var (brief, source) = (made.Brief, made.Brief.Ascent.Sounding.Source);
        var where = source.Station is { } station ? $"Station {station}" : "Station not known";
        var when = brief.AscentValidAt is { } valid
            ? $"{reader.DateAndTime(valid)}, {Age(brief, now, made.Inputs.Demonstration, reader)}"
            : "time not known";
        var far = brief.AscentDistanceKm is { } km ? $"{Math.Round(km)} km from the field" : "distance not known";
        var launched = source.LaunchTime is { } launch ? $"; launched {launch:HH:mm} UTC" : "";
        return $"{where}, {when}{launched}, {far}. Read as {source.Format}.";
    }

    private static string Age(Brief brief, DateTimeOffset now, bool demonstration, Reader reader) => demonstration
        ? $"{reader.Duration(brief.AscentAgeAt(brief.PreparedAt) ?? default)} old when prepared"
        : $"now {reader.Duration(brief.AscentAgeAt(now) ?? default)} old";
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
            yield return $"Chance that no usable thermal comes: {Percent(none)}. Ranges hold eight cases of ten, from {day.Assumptions.EnsembleSize} courses of the day.";
    }

    private static string Percent(double share) => share switch
    {
        < 0.01 => "less than 1 %",
        > 0.99 => "more than 99 %",
        _ => $"{Math.Round(100 * share)} %",
    };
}
