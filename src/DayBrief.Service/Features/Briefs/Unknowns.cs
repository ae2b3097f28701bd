using DayBrief.Days;
using DayBrief.Reports;
using DayBrief.Soundings;

namespace DayBrief.Service.Features.Briefs;

/// <summary>What this brief does not know, said plainly.</summary>
internal static class Unknowns
{
    public static IEnumerable<string> Of(MadeBrief made, Reader reader)
    {
        var (brief, assumptions) = (made.Brief, made.Inputs.Assumptions);
        if (brief.AscentValidAt is null)
            yield return reader["When the ascent was made."];
        if (brief.AscentDistanceKm is null)
            yield return reader["How far from the field the ascent was made."];
        if (brief.Ascent.Profile.Elevation is null)
            yield return reader["How high the ascent began; its ground is taken to be level with the field."];
        if (assumptions.MaxTemperatureC is null && assumptions.MixedTemperatureC is null)
            yield return reader["A forecast maximum temperature: the day's warming is worked out from sun and ground."];
        if (assumptions.CloudOktas is null && brief.Day.Assumptions.CloudByHour.IsDefaultOrEmpty)
            yield return reader["Cloud above the thermals: the sky is taken as clear but for the day's own cumulus."];
        if (brief.Day.Cloud.Unknown)
            yield return reader["Cloud base: the ascent has no dew points."];
        if (brief.Day.Winds is null)
            yield return reader["Wind: the ascent reports none."];
        if (brief.FreezingLevel is null)
            yield return brief.Ascent.Profile.SurfaceTemperature.Celsius < 0
                ? reader["A freezing level: the ascent is below 0 °C from the ground up."]
                : reader["The freezing level: the ascent does not reach it."];
        foreach (var unknown in OfReports(brief, reader))
            yield return unknown;
    }

    /// <summary>What a report or a forecast would tell, where none of them does.</summary>
    private static IEnumerable<string> OfReports(Brief brief, Reader reader)
    {
        AerodromeConditions[] told =
        [
            .. brief.Observation is { } report ? new[] { report.Conditions } : [],
            .. brief.Forecast?.Groups.Select(group => group.Conditions) ?? [],
        ];
        if (brief.Day.Assumptions.WindByHour.IsDefaultOrEmpty && !told.Any(conditions => conditions.Wind?.Speed is not null))
            yield return reader["Gusts: no report or forecast names the wind."];
        if (!told.Any(conditions => conditions.IsCavok || conditions.Visibility is not null))
            yield return reader["Visibility: no report or forecast names it."];
        yield return reader["What the sky really does today."];
    }

    /// <summary>What reading, checking and computing found, warnings first: the text, and the level it is about.</summary>
    public static IEnumerable<Finding> Remarks(MadeBrief made, Reader reader) =>
        made.Brief.Day.Cautions
            .Where(caution => caution.Code is not ("no-usable-thermals" or "no-winds" or "much-wind" or "ascent-time-unknown"))
            .Select(caution => new Finding(IsWarning: true, reader.Say(caution.Text)))
            .Concat(made.Brief.Ascent.Sounding.Remarks
                .OrderByDescending(remark => remark.Severity)
                .Select(remark => new Finding(remark.Severity == Severity.Warning, AtLevel(remark, reader))));

    private static string AtLevel(Remark remark, Reader reader) =>
        remark.Level is { } level && !remark.Message.Contains("hPa", StringComparison.Ordinal)
            ? reader.Say($"{reader.Say(remark.Words)} ({level.Hectopascals:0.#} hPa)")
            : reader.Say(remark.Words);
}

/// <summary>Something found about the ascent or its computation.</summary>
internal sealed record Finding(bool IsWarning, string Text);
