using DayBrief.Service.Languages;

namespace DayBrief.Service.Features.Arrivals;

/// <summary>What a site's day has brought against its brief, in words.</summary>
internal sealed class DayNews(FlagStore flags, ReminderStore reminders)
{
    public IReadOnlyList<string> Of(string siteId, DateOnly date, TimeZoneInfo zone, Language language) =>
        [.. flags.Of(siteId, date).Select(flag => FlagText.Of(flag.Deviation, zone, language))];

    public Reminder? Reminder(string siteId, DateOnly date) => reminders.Of(siteId, date);
}
