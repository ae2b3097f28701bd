using DayBrief.Service.Infrastructure;
using LiteDB;

namespace DayBrief.Service.Features.Arrivals;

/// <summary>Keeps the reminders, one for a site and day. Whether it still stands is told by the brief: signed or not.</summary>
internal sealed class ReminderStore(Database database)
{
    private const string Collection = "reminders";

    /// <summary>Notes a reminder; false when the day has one.</summary>
    public bool Add(Reminder reminder)
    {
        var isNew = false;
        database.Write(Collection, reminders =>
        {
            isNew = reminders.FindById(Key(reminder.SiteId, reminder.Date)) is null;
            if (isNew)
            {
                reminders.Insert(new BsonDocument
                {
                    ["_id"] = Key(reminder.SiteId, reminder.Date),
                    ["date"] = reminder.Date.DayNumber,
                    ["at"] = reminder.At.ToUnixTimeMilliseconds(),
                    ["brief"] = reminder.BriefId,
                });
            }
        });
        return isNew;
    }

    public Reminder? Of(string siteId, DateOnly date) =>
        database.Collection(Collection).FindById(Key(siteId, date)) is { } found
            ? new(siteId, date, DateTimeOffset.FromUnixTimeMilliseconds(found["at"].AsInt64), found["brief"].AsString)
            : null;

    public int Forget(DateOnly before)
    {
        var count = 0;
        database.Write(Collection, reminders => count = reminders.DeleteMany(Query.LT("date", before.DayNumber)));
        return count;
    }

    private static string Key(string siteId, DateOnly date) => $"{siteId}|{date:yyyy-MM-dd}";
}
