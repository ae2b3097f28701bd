using DayBrief.Days;
using DayBrief.Service.Infrastructure;
using LiteDB;

namespace DayBrief.Service.Features.Arrivals;

/// <summary>Keeps the flags of each brief, one of a kind.</summary>
internal sealed class FlagStore(Database database)
{
    private const string Collection = "flags";

    /// <summary>Puts a brief's flags in the place of its former ones; gives those of a kind it had not yet.</summary>
    public IReadOnlyList<Flag> Replace(string siteId, DateOnly date, string briefId, IReadOnlyCollection<Deviation> deviations, DateTimeOffset now)
    {
        var raised = new List<Flag>();
        database.Write(Collection, flags =>
        {
            var former = flags.Find(Query.EQ("day", Day(siteId, date))).Select(Flag).ToArray();
            flags.DeleteMany(Query.EQ("day", Day(siteId, date)));
            foreach (var deviation in deviations)
            {
                var before = former.FirstOrDefault(flag => flag.Deviation.Kind == deviation.Kind);
                var flag = new Flag(siteId, date, briefId, before?.RaisedAt ?? now, deviation);
                flags.Insert(Document(flag));
                if (before is null)
                    raised.Add(flag);
            }
        });
        return raised;
    }

    /// <summary>The flags of a site's day, in the order of their kinds.</summary>
    public IReadOnlyList<Flag> Of(string siteId, DateOnly date) =>
        [.. database.Collection(Collection).Find(Query.EQ("day", Day(siteId, date))).Select(Flag).OrderBy(flag => flag.Deviation.Kind)];

    public int Forget(DateOnly before)
    {
        var count = 0;
        database.Write(Collection, flags => count = flags.DeleteMany(Query.LT("date", before.DayNumber)));
        return count;
    }

    private static string Day(string siteId, DateOnly date) => $"{siteId}|{date:yyyy-MM-dd}";

    private static BsonDocument Document(Flag flag) => new()
    {
        ["_id"] = $"{Day(flag.SiteId, flag.Date)}|{Choice.NameOf(flag.Deviation.Kind)}",
        ["day"] = Day(flag.SiteId, flag.Date),
        ["site"] = flag.SiteId,
        ["date"] = flag.Date.DayNumber,
        ["brief"] = flag.BriefId,
        ["raisedAt"] = flag.RaisedAt.ToUnixTimeMilliseconds(),
        ["deviation"] = System.Text.Json.JsonSerializer.Serialize(flag.Deviation, Json.Line),
    };

    private static Flag Flag(BsonDocument found) => new(
        found["site"].AsString,
        DateOnly.FromDayNumber(found["date"].AsInt32),
        found["brief"].AsString,
        DateTimeOffset.FromUnixTimeMilliseconds(found["raisedAt"].AsInt64),
        System.Text.Json.JsonSerializer.Deserialize<Deviation>(found["deviation"].AsString, Json.Line)!);
}
