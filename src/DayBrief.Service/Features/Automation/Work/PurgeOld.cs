using System.Globalization;
using DayBrief.Service.Features.Arrivals;
using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Features.Soundings;

namespace DayBrief.Service.Features.Automation.Work;

/// <summary>Removes what is older than the installation keeps it. Signed briefs and their ascents stay unless the administrator
/// set a number of days.</summary>
internal sealed class PurgeOld(
    UpkeepSettings settings,
    BriefStore briefs,
    RevisionStore revisions,
    PublishedFiles files,
    SoundingStore soundings,
    ArrivalStore arrivals,
    ReportStore reports,
    FlagStore flags,
    ReminderStore reminders,
    RunLedger ledger,
    TimeProvider clock)
{
    public RunResult Run()
    {
        var now = clock.GetUtcNow();
        var today = DateOnly.FromDateTime(now.UtcDateTime);
        if (settings.SignedDays is { } signedDays)
            Signed(today.AddDays(-signedDays));
        var drafts = settings.DraftDays is { } draftDays ? briefs.Forget(today.AddDays(-draftDays), revisions.BriefIds()) : 0;
        var ascents = settings.SoundingDays is { } soundingDays ? Ascents(now.AddDays(-soundingDays)) : 0;
        var observed = 0;
        if (settings.ReportDays is { } reportDays)
        {
            observed = reports.Forget(now.AddDays(-reportDays))
                + flags.Forget(today.AddDays(-reportDays))
                + reminders.Forget(today.AddDays(-reportDays));
        }

        var runs = settings.RunDays is { } runDays ? ledger.Forget(now.AddDays(-runDays)) : 0;
        return new(RunCode.Purged, [.. new[] { drafts, ascents, observed, runs }.Select(count => count.ToString(CultureInfo.InvariantCulture))]);
    }

    private int Ascents(DateTimeOffset before)
    {
        arrivals.Forget(before);
        return soundings.Forget(before, briefs.SoundingIds().Concat(revisions.SoundingIds()).ToHashSet());
    }

    /// <summary>The store first: while it has a revision, the revision's files would be made again.</summary>
    private void Signed(DateOnly before)
    {
        foreach (var revision in revisions.Before(before))
        {
            revisions.Forget(revision);
            files.Delete(revision);
        }
    }
}
