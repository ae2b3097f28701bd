using DayBrief.Service.Features.Arrivals;
using DayBrief.Service.Features.Sites;

namespace DayBrief.Service.Features.Automation.Work;

/// <summary>Raises a reminder when the day's brief is not signed by then. Idempotent: one a day.</summary>
internal sealed class RemindToSign(
    SiteDays days, ReminderStore reminders, ArrivalEvents events, TimeProvider clock, ILogger<RemindToSign> log)
{
    public RunResult Run(SiteJson site, Slot slot)
    {
        if (days.IsSigned(site.Id!, slot.Date))
            return new(RunCode.Signed);
        var reminder = new Reminder(site.Id!, slot.Date, clock.GetUtcNow(), days.IdOf(site.Id!, slot.Date));
        if (reminders.Add(reminder))
        {
            AutomationLog.NotSigned(log, site.Name ?? site.Id!, slot.Date, null);
            events.Raise(reminder);
        }

        return new(RunCode.Reminded);
    }
}
