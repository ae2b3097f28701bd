using System.Globalization;
using DayBrief.Service.Infrastructure;
using LiteDB;
using JsonSerializer = System.Text.Json.JsonSerializer;

namespace DayBrief.Service.Features.Briefs.Revisions;

/// <summary>One field, one day, one brief: a row for each field and day says what holds, and a row for each place in the order of
/// its revisions can be taken once only. Both are keys of the store, which refuses a second.</summary>
internal sealed class DayHeadStore
{
    private const string Heads = "dayHeads";
    private const string Places = "dayPlaces";

    private readonly Database _database;

    public DayHeadStore(Database database)
    {
        _database = database;
        database.Write(Heads, heads => heads.EnsureIndex("date"));
    }

    public bool IsEmpty => _database.Collection(Heads).Count() == 0;

    public DayHead? Find(string siteId, DateOnly date) => _database.Collection(Heads).FindById(KeyOf(siteId, date)) is { } found ? Of(found) : null;

    /// <summary>What holds from one day to another, both counted in, of one field or of all.</summary>
    public IReadOnlyList<DayHead> Between(DateOnly first, DateOnly last, string? siteId = null) => siteId is null
        ? [.. _database.Collection(Heads).Find(Query.Between("date", first.DayNumber, last.DayNumber)).Select(Of)]
        : [.. _database.Collection(Heads).Find(Query.Between("_id", KeyOf(siteId, first), KeyOf(siteId, last))).Select(Of)];

    /// <summary>What holds on days before, the newest first, of one field or of all. Reads no further than it is asked to.</summary>
    public IEnumerable<DayHead> Before(DateOnly date, string? siteId = null) => siteId is null
        ? _database.Collection(Heads).Query().Where(Query.LT("date", date.DayNumber)).OrderByDescending("date").ToEnumerable().Select(Of)
        : _database.Collection(Heads).Query()
            .Where(Query.Between("_id", KeyOf(siteId, DateOnly.MinValue), KeyOf(siteId, date.AddDays(-1)))).OrderByDescending("_id").ToEnumerable().Select(Of);

    /// <summary>All revisions of a field and day by brief and number, in the order in which each took the place of the one before.</summary>
    public IReadOnlyList<(string BriefId, int Number)> OrderOf(string siteId, DateOnly date) =>
    [
        .. _database.Collection(Places).Find(Query.StartsWith("_id", KeyOf(siteId, date) + "|"))
            .OrderBy(place => place["_id"].AsString, StringComparer.Ordinal)
            .Select(place => (place["brief"].AsString, place["number"].AsInt32)),
    ];

    /// <summary>Puts a revision at the head, within a write of several.</summary>
    /// <exception cref="LiteException">Another has taken its place.</exception>
    public static void Put(Func<string, ILiteCollection<BsonDocument>> collection, DayHead head)
    {
        var key = KeyOf(head.SiteId, head.Date);
        collection(Places).Insert(new BsonDocument
        {
            ["_id"] = string.Create(CultureInfo.InvariantCulture, $"{key}|{head.Place:000000}"),
            ["brief"] = head.BriefId,
            ["number"] = head.Number,
        });
        Keep(collection(Heads), head);
    }

    /// <summary>Marks the head, if it is of that brief.</summary>
    public static void Withdraw(Func<string, ILiteCollection<BsonDocument>> collection, string siteId, DateOnly date, string briefId)
    {
        var heads = collection(Heads);
        if (heads.FindById(KeyOf(siteId, date)) is { } found && Of(found) is var head && head.BriefId == briefId)
            Keep(heads, head with { IsWithdrawn = true });
    }

    /// <summary>Every revision by field, day, brief and number: rows that cost little, whatever was signed in them.</summary>
    public IEnumerable<(string SiteId, DateOnly Date, string BriefId, int Number)> All()
    {
        foreach (var place in _database.Collection(Places).FindAll())
        {
            var key = place["_id"].AsString.Split('|');
            yield return (
                string.Join('|', key[..^2]), DateOnly.ParseExact(key[^2], "yyyy-MM-dd", CultureInfo.InvariantCulture), place["brief"].AsString, place["number"].AsInt32);
        }
    }

    /// <summary>Removes a revision from its field and day for good.</summary>
    public static void Forget(Func<string, ILiteCollection<BsonDocument>> collection, Revision revision)
    {
        var key = KeyOf(revision.SiteId, revision.Date);
        collection(Places).DeleteMany(Query.And(Query.StartsWith("_id", key + "|"), Query.EQ("brief", revision.BriefId), Query.EQ("number", revision.Number)));
        if (collection(Heads).FindById(key) is { } found && Of(found).RevisionId == revision.Id)
            collection(Heads).Delete(key);
    }

    private static void Keep(ILiteCollection<BsonDocument> heads, DayHead head) => heads.Upsert(new BsonDocument
    {
        ["_id"] = KeyOf(head.SiteId, head.Date),
        ["date"] = head.Date.DayNumber,
        ["head"] = JsonSerializer.Serialize(head, Json.Line),
    });

    private static DayHead Of(BsonDocument document) => JsonSerializer.Deserialize<DayHead>(document["head"].AsString, Json.Line)!;

    private static string KeyOf(string siteId, DateOnly date) => string.Create(CultureInfo.InvariantCulture, $"{siteId}|{date:yyyy-MM-dd}");
}
