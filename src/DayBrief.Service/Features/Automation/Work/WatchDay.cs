using DayBrief.Days;
using DayBrief.Reports;
using DayBrief.Service.Features.Arrivals;
using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Automation.Work;

/// <summary>Compares a site's day with its reports and keeps the flags. Idempotent: the same reports give the same flags.</summary>
internal sealed class WatchDay(
    SiteDays days, ReportStore reports, FlagStore flags, ArrivalEvents events, TimeProvider clock, ILogger<WatchDay> log)
{
    /// <returns>How many flags were raised that the day had not yet.</returns>
    public int Compare(SiteJson site, DateOnly date)
    {
        if (days.Find(site.Id!, date) is not { } made)
            return 0;
        var raised = flags.Replace(site.Id!, date, made.Id!, ComparedDay.Of(Watch(site, date, made)), clock.GetUtcNow());
        foreach (var flag in raised)
        {
            AutomationLog.Flagged(log, site.Name ?? site.Id!, FlagText.Of(flag.Deviation, made.Brief.Site.TimeZone, Languages.Language.English), null);
            events.Raise(flag);
        }

        return raised.Count;
    }

    private DayWatch Watch(SiteJson site, DateOnly date, MadeBrief made)
    {
        var brief = made.Brief;
        var from = LocalClock.InstantOf(date, TimeOnly.MinValue, brief.Site.TimeZone);
        var to = LocalClock.InstantOf(date.AddDays(1), TimeOnly.MinValue, brief.Site.TimeZone);
        var forecast = reports.Latest(site.Id!, ReportKind.Forecast, from.AddHours(-12), to);
        return new()
        {
            Course = DayCourse.Of(brief.Day),
            Reports = [.. reports.Of(site.Id!, ReportKind.Observation, from, to).Select(report => new TimedReport(report.At, MetarReader.Read(report.Raw)))],
            StationAboveFieldM = (site.Automation?.ReportElevationM ?? brief.Site.Elevation.Metres) - brief.Site.Elevation.Metres,
            WindLimit = brief.Site.Limits.Wind,
            GustLimit = brief.Site.Limits.Gust,
            Qnh = brief.Day.Assumptions.Qnh ?? brief.Observation?.Qnh,
            BriefForecast = brief.Forecast,
            LatestForecast = forecast is null ? null : (TafReader.Read(forecast.Raw), forecast.At),
        };
    }
}
