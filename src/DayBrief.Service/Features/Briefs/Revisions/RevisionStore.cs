using DayBrief.Service.Infrastructure;
using LiteDB;
using JsonSerializer = System.Text.Json.JsonSerializer;

namespace DayBrief.Service.Features.Briefs.Revisions;

/// <summary>Keeps what was signed. Revisions are only ever added; a withdrawal stands beside them.</summary>
internal sealed class RevisionStore
{
    private const string Collection = "revisions";
    private const string Withdrawn = "withdrawals";

    private readonly Database _database;

    public RevisionStore(Database database)
    {
        _database = database;
        database.Write(Collection, revisions =>
        {
            revisions.EnsureIndex("brief");
            revisions.EnsureIndex("date");
            revisions.EnsureIndex("signedAt");
        });
    }

    /// <summary>Adds a revision; it is on the disk when this returns.</summary>
    /// <exception cref="LiteException">There is one of that number already.</exception>
    public void Add(Revision revision) =>
        _database.Write(Collection, revisions => revisions.Insert(new BsonDocument
        {
            ["_id"] = revision.Id,
            ["brief"] = revision.BriefId,
            ["number"] = revision.Number,
            ["site"] = revision.SiteId,
            ["date"] = revision.Date.DayNumber,
            ["signedAt"] = revision.SignedAt.ToUnixTimeMilliseconds(),
            ["text"] = revision.Text,
            ["hash"] = revision.Hash,
        }));

    public Revision? Find(string briefId, int number) =>
        _database.Collection(Collection).FindById(Revision.IdOf(briefId, number)) is { } found ? Of(found) : null;

    /// <summary>The revision that holds; null when none was signed.</summary>
    public Revision? Latest(string briefId) => Of(briefId) is [.., var latest] ? latest : null;

    /// <summary>All revisions of a brief, the first first.</summary>
    public IReadOnlyList<Revision> Of(string briefId) =>
        [.. _database.Collection(Collection).Find(Query.EQ("brief", briefId)).Select(Of).OrderBy(revision => revision.Number)];

    /// <summary>The revisions that hold for a day, the last signed first.</summary>
    public IReadOnlyList<Revision> HoldingOn(DateOnly date) =>
        [.. Holding(_database.Collection(Collection).Find(Query.EQ("date", date.DayNumber)))];

    /// <summary>The revisions that hold on the latest days, newest day first.</summary>
    public IReadOnlyList<Revision> Newest(int most = 200) =>
        [.. Holding(_database.Collection(Collection).Query().OrderByDescending("date").Limit(most).ToEnumerable()).OrderByDescending(revision => revision.Date)];

    public bool IsEmpty => _database.Collection(Collection).Count() == 0;

    /// <summary>Of the revisions that hold, the one of the latest day that was signed last; of one site or of any. Opens no
    /// more days than needed.</summary>
    public Revision? Newest(string? site)
    {
        var before = Query.LT("date", int.MaxValue);
        while (_database.Collection(Collection).Query().Where(site is null ? before : Query.And(before, Query.EQ("site", site)))
            .OrderByDescending("date").FirstOrDefault() is { } newest)
        {
            var date = newest["date"].AsInt32;
            var holding = HoldingOn(DateOnly.FromDayNumber(date)).Where(revision => Latest(revision.BriefId)!.Id == revision.Id);
            if (holding.FirstOrDefault(revision => site is null || revision.SiteId == site) is { } found)
                return found;
            before = Query.LT("date", date);
        }

        return null;
    }

    /// <summary>Everything signed since a moment, oldest first: for those who pass it on.</summary>
    public IReadOnlyList<Revision> SignedSince(DateTimeOffset moment) =>
    [
        .. _database.Collection(Collection).Find(Query.GTE("signedAt", moment.ToUnixTimeMilliseconds()))
            .Select(Of).OrderBy(revision => revision.SignedAt).ThenBy(revision => revision.Number),
    ];

    /// <summary>Whether a brief was ever signed for a site.</summary>
    public bool IsFor(string siteId) => _database.Collection(Collection).Exists(Query.EQ("site", siteId));

    /// <summary>The briefs that have been signed.</summary>
    public IReadOnlySet<string> BriefIds() =>
        _database.Collection(Collection).FindAll().Select(found => found["brief"].AsString).ToHashSet();

    /// <summary>The ascents that revisions are made of.</summary>
    public IReadOnlySet<string> SoundingIds() =>
        _database.Collection(Collection).FindAll().Select(found => Of(found).Inputs.SoundingId).ToHashSet();

    /// <summary>Every revision for a day before.</summary>
    public IReadOnlyList<Revision> Before(DateOnly date) =>
        [.. _database.Collection(Collection).Find(Query.LT("date", date.DayNumber)).Select(Of)];

    /// <summary>Removes a revision for good, because an administrator set that it is not kept so long.</summary>
    public void Forget(Revision revision)
    {
        _database.Write(Collection, revisions => revisions.Delete(revision.Id));
        _database.Write(Withdrawn, withdrawals => withdrawals.Delete(revision.BriefId));
    }

    /// <summary>What was signed last for a site, the newest first, replaced revisions too.</summary>
    public IReadOnlyList<Revision> LastOfSite(string siteId, int most) =>
        [.. _database.Collection(Collection).Query().OrderByDescending("signedAt").ToEnumerable().Where(document => document["site"].AsString == siteId).Take(most).Select(Of)];

    /// <summary>Every last withdrawal of a brief since a moment, also of briefs that were signed again.</summary>
    public IReadOnlyList<(string BriefId, Withdrawal Withdrawal)> WithdrawnSince(DateTimeOffset moment) =>
    [
        .. _database.Collection(Withdrawn).Find(Query.GTE("at", moment.ToUnixTimeMilliseconds()))
            .Select(found => (found["_id"].AsString, JsonSerializer.Deserialize<Withdrawal>(found["withdrawal"].AsString, Json.Line)!)),
    ];

    public void Withdraw(string briefId, Withdrawal withdrawal) =>
        _database.Write(Withdrawn, withdrawals => withdrawals.Upsert(new BsonDocument
        {
            ["_id"] = briefId,
            ["at"] = withdrawal.At.ToUnixTimeMilliseconds(),
            ["withdrawal"] = JsonSerializer.Serialize(withdrawal, Json.Line),
        }));

    /// <summary>A brief that is signed again is no longer withdrawn.</summary>
    public Withdrawal? WithdrawalOf(string briefId) =>
        _database.Collection(Withdrawn).FindById(briefId) is { } found
        && JsonSerializer.Deserialize<Withdrawal>(found["withdrawal"].AsString, Json.Line) is { } withdrawal
        && !(Latest(briefId)?.SignedAt > withdrawal.At)
            ? withdrawal
            : null;

    private static IEnumerable<Revision> Holding(IEnumerable<BsonDocument> documents) =>
        documents.GroupBy(document => document["brief"].AsString)
            .Select(brief => Of(brief.MaxBy(document => document["number"].AsInt32)!))
            .OrderByDescending(revision => revision.SignedAt);

    private static Revision Of(BsonDocument document) => Revision.Open(document["text"].AsString, document["hash"].AsString);
}
