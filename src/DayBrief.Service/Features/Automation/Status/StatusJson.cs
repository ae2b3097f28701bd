using DayBrief.Service.Features.Arrivals;
using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Languages;

namespace DayBrief.Service.Features.Automation.Status;

/// <summary>The status as the outside contract names it.</summary>
internal sealed record StatusJson(
    DateTimeOffset Now, IReadOnlyList<SiteStatusJson> Sites, IReadOnlyList<JobStatusJson> Installation, IReadOnlyList<BackupJson> Backups,
    IReadOnlyList<FollowingJson> Following)
{
    public static StatusJson Of(StatusView view) => new(
        view.Now,
        [.. view.Sites.Select(SiteStatusJson.Of)],
        [.. view.Installation.Select(JobStatusJson.Of)],
        [.. view.Backups.Select(backup => new BackupJson(backup.Name, backup.Bytes, backup.At))],
        [.. view.Following.Select(FollowingJson.Of)]);
}

/// <summary>What follows from a signature, and how it went.</summary>
internal sealed record FollowingJson(string Site, DateOnly Date, string BriefId, int Number, Follower Follower, bool Done, int Failures, DateTimeOffset? RetryAt, string? Fault)
{
    public static FollowingJson Of(OutboxEntry entry) => new(
        entry.Told.SiteId, entry.Told.Date, entry.Told.BriefId, entry.Told.Number, entry.Follower, entry.IsDone, entry.Failures,
        entry.IsDone ? null : entry.NextAt, entry.Fault);
}

internal sealed record BackupJson(string Name, long Bytes, DateTimeOffset At);

internal sealed record SiteStatusJson(
    string Site,
    bool Automatic,
    IReadOnlyList<JobStatusJson> Jobs,
    DateTimeOffset? RemindedAt,
    IReadOnlyList<FlagJson> Flags,
    ArrivalJson? Ascent,
    ReportJson? Observation,
    ReportJson? Forecast)
{
    public static SiteStatusJson Of(SiteStatus site) => new(
        site.Id,
        site.IsAutomatic,
        [.. site.Jobs.Select(JobStatusJson.Of)],
        site.Reminder?.At,
        [.. site.Flags.Select(flag => FlagJson.Of(flag, site.Zone))],
        site.Ascent is { } ascent ? new(ascent.SoundingId, ascent.ValidAt, ascent.ArrivedAt, ascent.Station, ascent.Origin) : null,
        ReportJson.Of(site.Observation),
        ReportJson.Of(site.Forecast));
}

internal sealed record ArrivalJson(string SoundingId, DateTimeOffset? ValidAt, DateTimeOffset ArrivedAt, string? Station, string Origin);

internal sealed record ReportJson(string Station, DateTimeOffset At, string Raw, string Origin)
{
    public static ReportJson? Of(KeptReport? report) => report is null ? null : new(report.Station, report.At, report.Raw, report.Origin);
}

internal sealed record FlagJson(
    Days.DeviationKind Code, DateTimeOffset At, double? Observed, double? Expected, double? Minutes, string? Group, string BriefId, DateTimeOffset RaisedAt, string Text)
{
    public static FlagJson Of(Flag flag, TimeZoneInfo zone) => new(
        flag.Deviation.Kind,
        flag.Deviation.At,
        flag.Deviation.Observed,
        flag.Deviation.Expected,
        flag.Deviation.Minutes,
        flag.Deviation.Group,
        flag.BriefId,
        flag.RaisedAt,
        FlagText.Of(flag.Deviation, zone, Language.English));
}

internal sealed record JobStatusJson(AutomationJob Job, DateTimeOffset? Next, RunJson? Last)
{
    public static JobStatusJson Of(JobStatus job) => new(job.Job, job.Next, RunJson.Of(job.Last));
}

internal sealed record RunJson(
    RunState State, DateOnly Date, string Slot, DateTimeOffset StartedAt, DateTimeOffset? EndedAt, int Attempts, DateTimeOffset? RetryAt, RunCode? Code, string? Text)
{
    public static RunJson? Of(Run? run) => run is null
        ? null
        : new(
            run.State,
            run.Slot.Date,
            run.Slot.Name,
            run.StartedAt,
            run.EndedAt,
            run.Attempts,
            run.NextAt,
            run.Result?.Code,
            run.Result is { } result ? RunText.Of(result, Language.English) : null);
}
