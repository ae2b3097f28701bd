using DayBrief.Service.Infrastructure;
using LiteDB;
using JsonSerializer = System.Text.Json.JsonSerializer;

namespace DayBrief.Service.Features.Briefs.Revisions;

/// <summary>What is to follow from signatures, written in their transaction: a stop between the two loses neither.</summary>
internal sealed class Outbox
{
    private const string Collection = "outbox";

    private readonly Database _database;

    public Outbox(Database database)
    {
        _database = database;
        database.Write(Collection, entries =>
        {
            entries.EnsureIndex("waiting");
            entries.EnsureIndex("at");
        });
    }

    /// <summary>Enters all that follows, within a write of several.</summary>
    public static void Put(Func<string, ILiteCollection<BsonDocument>> collection, Announcement told)
    {
        foreach (var entry in OutboxEntry.Of(told))
            collection(Collection).Upsert(Document(entry));
    }

    public void Keep(OutboxEntry entry) => _database.Write(Collection, entries => entries.Upsert(Document(entry)));

    public OutboxEntry? Find(string id) => _database.Collection(Collection).FindById(id) is { } found ? Of(found) : null;

    /// <summary>What has not been done, whether its time has come or not, the oldest first and of one signature in the order of followers.</summary>
    public IReadOnlyList<OutboxEntry> Waiting() =>
    [
        .. _database.Collection(Collection).Find(Query.EQ("waiting", true)).Select(Of).OrderBy(entry => entry.Told.At).ThenBy(entry => entry.Follower),
    ];

    /// <summary>The latest, newest signature first.</summary>
    public IReadOnlyList<OutboxEntry> Latest(int most) =>
        [.. _database.Collection(Collection).Query().OrderByDescending("at").Limit(most).ToEnumerable().Select(Of).OrderByDescending(entry => entry.Told.At).ThenBy(entry => entry.Follower)];

    /// <summary>Forgets what was done before a moment.</summary>
    public void Forget(DateTimeOffset before) => _database.Write(
        Collection, entries => entries.DeleteMany(Query.And(Query.LT("at", before.ToUnixTimeMilliseconds()), Query.EQ("waiting", false))));

    private static BsonDocument Document(OutboxEntry entry) => new()
    {
        ["_id"] = entry.Id,
        ["waiting"] = !entry.IsDone,
        ["at"] = entry.Told.At.ToUnixTimeMilliseconds(),
        ["entry"] = JsonSerializer.Serialize(entry, Json.Line),
    };

    private static OutboxEntry Of(BsonDocument document) => JsonSerializer.Deserialize<OutboxEntry>(document["entry"].AsString, Json.Line)!;
}
