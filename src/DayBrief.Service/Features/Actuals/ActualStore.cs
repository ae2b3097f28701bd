using System.Globalization;
using DayBrief.Service.Infrastructure;
using LiteDB;
using JsonSerializer = System.Text.Json.JsonSerializer;

namespace DayBrief.Service.Features.Actuals;

/// <summary>Keeps what really happened, by field and day; an entry that is sent again takes its own place.</summary>
internal sealed class ActualStore(Database database)
{
    private const string Entries = "actuals";
    private const string Pictures = "actualPhotos";

    /// <summary>Keeps all of them, or none.</summary>
    public void Keep(string siteId, DateOnly date, IReadOnlyList<(Actual Entry, byte[]? Photo)> entries) => database.Together(collection =>
    {
        foreach (var (entry, photo) in entries)
        {
            var key = KeyOf(siteId, date, entry.Id);
            // Changed without sending the photo again: it stays.
            var hasPhoto = photo is not null || collection(Pictures).FindById(key) is not null;
            collection(Entries).Upsert(new BsonDocument
            {
                ["_id"] = key,
                ["entry"] = JsonSerializer.Serialize(entry with { HasPhoto = hasPhoto }, Json.Line),
            });
            if (photo is not null)
                collection(Pictures).Upsert(new BsonDocument { ["_id"] = key, ["jpeg"] = photo });
        }
    });

    /// <summary>A day's entries, earliest first.</summary>
    public IReadOnlyList<Actual> Of(string siteId, DateOnly date) => [.. Between(siteId, date, date).Select(day => day.Entry)];

    /// <summary>All entries from one day to another, both counted in, in the order of their times.</summary>
    public IReadOnlyList<(DateOnly Date, Actual Entry)> Between(string siteId, DateOnly first, DateOnly last) =>
    [
        .. database.Collection(Entries)
            .Find(Query.Between("_id", KeyOf(siteId, first, ""), KeyOf(siteId, last, "~")))
            .Select(found => (DateOf(found["_id"].AsString), JsonSerializer.Deserialize<Actual>(found["entry"].AsString, Json.Line)!))
            .OrderBy(day => day.Item2.At)
            .ThenBy(day => day.Item2.Id, StringComparer.Ordinal),
    ];

    public byte[]? Photo(string siteId, DateOnly date, string id) =>
        database.Collection(Pictures).FindById(KeyOf(siteId, date, id))?["jpeg"].AsBinary;

    /// <summary>Removes an entry with its photo; false when it is not there.</summary>
    public bool Remove(string siteId, DateOnly date, string id)
    {
        var removed = false;
        database.Together(collection =>
        {
            removed = collection(Entries).Delete(KeyOf(siteId, date, id));
            collection(Pictures).Delete(KeyOf(siteId, date, id));
        });
        return removed;
    }

    private static string KeyOf(string siteId, DateOnly date, string id) => string.Create(CultureInfo.InvariantCulture, $"{siteId}|{date:yyyy-MM-dd}|{id}");

    private static DateOnly DateOf(string key) => DateOnly.ParseExact(key.Split('|')[1], "yyyy-MM-dd", CultureInfo.InvariantCulture);
}
