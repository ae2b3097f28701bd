using DayBrief.Service.Features.Arrivals;
using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Infrastructure;
using DayBrief.Soundings;

namespace DayBrief.Service.Features.Automation.Work;

/// <summary>Prepares the day's draft from the latest ascent that came by itself, the site's standing settings and the latest
/// reports. Idempotent: a day that has a brief keeps it.</summary>
internal sealed class PrepareDraft(SiteDays days, ArrivalStore arrivals, ReportStore reports, TimeProvider clock)
{
    // The evening's ascent still tells of the morning; an older one does not.
    private static readonly TimeSpan Oldest = TimeSpan.FromHours(12);

    public RunResult Run(SiteJson site, Slot slot)
    {
        if (days.IdOf(site.Id!, slot.Date) is { } there)
            return new(RunCode.DraftThere, there);
        if (Ascent(site, slot.Date) is not { } ascent)
            throw new RunFailedException(new(RunCode.NoSounding));
        try
        {
            return new(RunCode.DraftMade, days.MakeDraft(Inputs(site, slot.Date, ascent)));
        }
        catch (Exception refused) when (refused is InvalidSoundingException or InvalidInputException)
        {
            throw new RunFailedException(new(RunCode.DayRefused, refused.Message), mayPass: false, cause: refused);
        }
    }

    private ArrivedSounding? Ascent(SiteJson site, DateOnly date)
    {
        var zone = site.ToSite().TimeZone;
        var from = LocalClock.InstantOf(date, TimeOnly.MinValue, zone) - Oldest;
        var to = LocalClock.InstantOf(date.AddDays(1), TimeOnly.MinValue, zone);
        return arrivals.Of(site.Id!).FirstOrDefault(arrived =>
            (arrived.ValidAt ?? arrived.ArrivedAt) is var at && at >= from && at < to);
    }

    private BriefInputs Inputs(SiteJson site, DateOnly date, ArrivedSounding ascent)
    {
        var now = clock.GetUtcNow();
        return new()
        {
            SoundingId = ascent.SoundingId,
            Site = site,
            Date = date,
            PreparedAt = now,
            Observation = Latest(ReportKind.Observation, TimeSpan.FromHours(2)),
            Forecast = Latest(ReportKind.Forecast, TimeSpan.FromHours(12)),
        };

        string? Latest(ReportKind kind, TimeSpan age) => reports.Latest(site.Id!, kind, now - age, now.AddHours(1))?.Raw;
    }
}
