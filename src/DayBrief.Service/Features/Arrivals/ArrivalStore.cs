using DayBrief.Service.Infrastructure;
using LiteDB;

namespace DayBrief.Service.Features.Arrivals;

/// <summary>Remembers which ascents came by themselves, and for which site.</summary>
internal sealed class ArrivalStore(Database database)
{
    private const string Collection = "arrivals";

    /// <summary>Notes an ascent; false when the site has this very one already.</summary>
    public bool Add(ArrivedSounding arrived)
    {
        var isNew = false;
        database.Write(Collection, arrivals =>
        {
            var key = $"{arrived.SiteId}|{arrived.SoundingId}";
            isNew = arrivals.FindById(key) is null;
            if (isNew)
                arrivals.Insert(Document(key, arrived));
        });
        return isNew;
    }

    /// <summary>The ascents of a site, latest air first; where two are of one time the later come.</summary>
    public IReadOnlyList<ArrivedSounding> Of(string siteId) =>
    [
        .. database.Collection(Collection).Find(Query.EQ("site", siteId))
            .Select(Arrived)
            .OrderByDescending(arrived => arrived.ValidAt ?? arrived.ArrivedAt)
            .ThenByDescending(arrived => arrived.ArrivedAt),
    ];

    /// <summary>Forgets what came before a moment; the ascents themselves are kept elsewhere.</summary>
    public int Forget(DateTimeOffset before)
    {
        var count = 0;
        database.Write(Collection, arrivals => count = arrivals.DeleteMany(Query.LT("arrivedAt", before.ToUnixTimeMilliseconds())));
        return count;
    }

    private static BsonDocument Document(string key, ArrivedSounding arrived) => new()
    {
        ["_id"] = key,
        ["site"] = arrived.SiteId,
        ["sounding"] = arrived.SoundingId,
        ["arrivedAt"] = arrived.ArrivedAt.ToUnixTimeMilliseconds(),
        ["validAt"] = arrived.ValidAt?.ToUnixTimeMilliseconds(),
        ["station"] = arrived.Station,
        ["origin"] = arrived.Origin,
    };

    private static ArrivedSounding Arrived(BsonDocument found) => new(
        found["site"].AsString,
        found["sounding"].AsString,
        DateTimeOffset.FromUnixTimeMilliseconds(found["arrivedAt"].AsInt64),
        found["validAt"].IsNull ? null : DateTimeOffset.FromUnixTimeMilliseconds(found["validAt"].AsInt64),
        found["station"].AsString,
        found["origin"].AsString);
}
