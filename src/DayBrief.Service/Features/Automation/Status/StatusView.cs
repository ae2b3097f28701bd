using DayBrief.Service.Features.Arrivals;
using DayBrief.Service.Features.Briefs.Revisions;

namespace DayBrief.Service.Features.Automation.Status;

/// <summary>What runs by itself, as the status page and its JSON show it.</summary>
internal sealed record StatusView(
    DateTimeOffset Now, IReadOnlyList<SiteStatus> Sites, IReadOnlyList<JobStatus> Installation, IReadOnlyList<BackupFile> Backups,
    IReadOnlyList<OutboxEntry> Following);

/// <summary>One site.</summary>
internal sealed record SiteStatus(
    string Id,
    string Name,
    TimeZoneInfo Zone,
    bool IsAutomatic,
    IReadOnlyList<JobStatus> Jobs,
    Reminder? Reminder,
    IReadOnlyList<Flag> Flags,
    ArrivedSounding? Ascent,
    KeptReport? Observation,
    KeptReport? Forecast);

/// <summary>One job: how its latest run went and when the next is due.</summary>
internal sealed record JobStatus(AutomationJob Job, Run? Last, DateTimeOffset? Next);

/// <summary>A backup that is kept.</summary>
internal sealed record BackupFile(string Name, long Bytes, DateTimeOffset At);
