using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Automation;

/// <summary>What is to be done for the whole installation, each night (UTC).</summary>
internal sealed class InstallationSchedule(UpkeepSettings settings)
{
    public IReadOnlyList<Slot> On(DateOnly date) =>
    [
        Of(AutomationJob.Backup, date, settings.BackupAt),
        Of(AutomationJob.Purge, date, settings.PurgeAt),
    ];

    public Slot Next(AutomationJob job, DateTimeOffset now)
    {
        var today = DateOnly.FromDateTime(now.UtcDateTime);
        return On(today).Concat(On(today.AddDays(1))).First(slot => slot.Job == job && slot.DueAt > now);
    }

    private static Slot Of(AutomationJob job, DateOnly date, TimeOnly at) =>
        new(job, Slot.Installation, date, $"{at:HHmm}Z", LocalClock.InstantOf(date, at, TimeZoneInfo.Utc));
}
