using System.Security.Cryptography;
using DayBrief.Service.Infrastructure;
using LiteDB;
using JsonSerializer = System.Text.Json.JsonSerializer;

namespace DayBrief.Service.Features.Briefs;

/// <summary>Keeps the working state of briefs: the inputs they are computed from, and what was typed to get there.</summary>
/// <remarks>What was signed is kept apart and never changes: <see cref="Revisions.RevisionStore"/>.</remarks>
internal sealed class BriefStore
{
    private const string Collection = "briefs";
    private const string Versions = "draftVersions";

    private readonly Database _database;

    public BriefStore(Database database)
    {
        _database = database;
        database.Write(Collection, briefs => briefs.EnsureIndex("date"));
    }

    public static string NewId() => Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(5));

    /// <summary>Keeps complete inputs that did not come from the desk.</summary>
    public void Save(string id, BriefInputs inputs) => Save(
        new Draft { Id = id, SiteId = inputs.Site.Id ?? "", Date = inputs.Date, Inputs = inputs, EditedBy = inputs.PreparedBy, EditedAt = inputs.PreparedAt },
        expected: null);

    /// <summary>Keeps a draft as its next version, if it is still at the version that the editor saw (null: whatever is there).
    /// Every version stays readable.</summary>
    /// <returns>The kept draft; null when somebody else was first.</returns>
    public Draft? Save(Draft draft, int? expected)
    {
        Draft? kept = null;
        _database.Write(Collection, briefs =>
        {
            var version = briefs.FindById(draft.Id) is { } found ? found["version"].AsInt32 : 0;
            if (expected is { } seen && seen != version)
                return;
            kept = draft with { Version = version + 1 };
            briefs.Upsert(Document(kept));
        });
        if (kept is not null)
        {
            _database.Write(Versions, versions => versions.Upsert(
                new BsonDocument { ["_id"] = $"{kept.Id}-{kept.Version:00000}", ["draft"] = JsonSerializer.Serialize(kept, Json.Line) }));
        }

        return kept;
    }

    public Draft? Find(string id) => _database.Collection(Collection).FindById(id) is { } found ? Of(found) : null;

    /// <summary>An earlier version of a draft.</summary>
    public Draft? Find(string id, int version) =>
        _database.Collection(Versions).FindById($"{id}-{version:00000}") is { } found
            ? JsonSerializer.Deserialize<Draft>(found["draft"].AsString, Json.Line)
            : null;

    public bool IsEmpty => _database.Collection(Collection).Count() == 0;

    /// <summary>Whether there is a brief for a site.</summary>
    public bool IsFor(string siteId) => _database.Collection(Collection).Exists(Query.EQ("site", siteId));

    /// <summary>The newest briefs, by day and then by when they were last touched.</summary>
    public IReadOnlyList<Draft> Newest(int most = 400) =>
    [
        .. _database.Collection(Collection).Query().OrderByDescending("date").Limit(most).ToEnumerable().Select(Of)
            .OrderByDescending(draft => draft.Date).ThenByDescending(draft => draft.EditedAt).ThenBy(draft => draft.Id, StringComparer.Ordinal),
    ];

    /// <summary>The briefs of one day, the last touched first.</summary>
    public IReadOnlyList<Draft> On(DateOnly date) =>
    [
        .. _database.Collection(Collection).Find(Query.EQ("date", date.DayNumber)).Select(Of)
            .OrderByDescending(draft => draft.EditedAt).ThenBy(draft => draft.Id, StringComparer.Ordinal),
    ];

    /// <summary>The ascents that drafts are made of.</summary>
    public IReadOnlySet<string> SoundingIds() =>
        Newest(int.MaxValue).SelectMany(draft => new[] { draft.Inputs?.SoundingId, draft.Fields?.GetValueOrDefault("kept") }).OfType<string>().ToHashSet();

    /// <summary>Removes the drafts of days before, with all their versions, but those of signed briefs and the demonstration.</summary>
    public int Forget(DateOnly before, IReadOnlySet<string> signed)
    {
        string[] old = [.. _database.Collection(Collection).Find(Query.LT("date", before.DayNumber)).Select(Of)
            .Where(draft => !draft.Demonstration && !signed.Contains(draft.Id)).Select(draft => draft.Id)];
        foreach (var id in old)
        {
            _database.Write(Collection, briefs => briefs.Delete(id));
            _database.Write(Versions, versions => versions.DeleteMany(Query.StartsWith("_id", id + "-")));
        }

        return old.Length;
    }

    private static BsonDocument Document(Draft draft) => new()
    {
        ["_id"] = draft.Id,
        ["date"] = draft.Date.DayNumber,
        ["version"] = draft.Version,
        ["site"] = draft.SiteId,
        ["draft"] = JsonSerializer.Serialize(draft, Json.Line),
    };

    private static Draft Of(BsonDocument document) =>
        document["draft"] is { IsString: true } kept
            ? JsonSerializer.Deserialize<Draft>(kept.AsString, Json.Line)!
            : OfFirstFormat(document);

    /// <summary>Briefs kept by the first version of the program, which knew no drafts.</summary>
    private static Draft OfFirstFormat(BsonDocument document)
    {
        var inputs = JsonSerializer.Deserialize<BriefInputs>(document["inputs"].AsString, Json.Line)!;
        return new()
        {
            Id = document["_id"].AsString,
            SiteId = inputs.Site.Id ?? "",
            Date = inputs.Date,
            Inputs = inputs,
            EditedBy = inputs.PreparedBy,
            EditedAt = inputs.PreparedAt,
        };
    }
}
