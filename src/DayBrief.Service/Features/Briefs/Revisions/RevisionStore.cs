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
    private readonly DayHeadStore _heads;
    private readonly SignedJournal _journal;

    public RevisionStore(Database database, DayHeadStore heads, SignedJournal journal)
    {
        (_database, _heads, _journal) = (database, heads, journal);
        database.Write(Collection, revisions =>
        {
            revisions.EnsureIndex("brief");
            revisions.EnsureIndex("date");
            revisions.EnsureIndex("signedAt");
        });
        if (heads.IsEmpty && !IsEmpty)
            MakeHeads();
        Join();
    }

    /// <summary>Adds a revision as the one that holds for its field and day; it is on the disk when this returns.</summary>
    /// <exception cref="LiteException">One of that number has been signed for the field and day already.</exception>
    /// <param name="revision">The revision.</param>
    /// <param name="along">What is written in the same transaction: all of it is kept, or none.</param>
    public void Add(Revision revision, Action<Func<string, ILiteCollection<BsonDocument>>>? along = null)
    {
        // The journal first: what it has and the store has not comes back at the next start.
        if (Find(revision.BriefId, revision.Number) is null)
            _journal.Signed(revision);
        try
        {
            Keep(revision, along);
        }
        catch when (Find(revision.BriefId, revision.Number) is null)
        {
            _journal.Forgotten(revision);
            throw;
        }
    }

    /// <summary>What an earlier version of the program signed goes into a new journal; what the journal has and the store has lost
    /// comes back from there.</summary>
    private void Join()
    {
        if (_journal.IsNew && !_journal.HasSigned)
        {
            foreach (var revision in SignedSince(DateTimeOffset.UnixEpoch))
                _journal.Signed(revision, atStart: true);
            return;
        }

        foreach (var day in _journal.Revisions().GroupBy(revision => (revision.SiteId, revision.Date)).Where(day => !IsWhole([.. day])))
            Restore([.. day.OrderBy(revision => revision.Number)]);
        foreach (var (briefId, withdrawal) in _journal.Withdrawals())
        {
            if (WithdrawalOf(briefId) is null && Latest(briefId) is { } latest && latest.SignedAt <= withdrawal.At)
                Keep(latest, withdrawal);
        }
    }

    private bool IsWhole(Revision[] day)
    {
        var order = OrderOf(day[0].SiteId, day[0].Date);
        return _heads.Find(day[0].SiteId, day[0].Date) is not null
            && day.All(revision => order.Contains((revision.BriefId, revision.Number)) && Find(revision.BriefId, revision.Number) is not null);
    }

    /// <summary>All of one field and day anew, in the order in which each took the place of the one before.</summary>
    private void Restore(Revision[] day)
    {
        foreach (var revision in day)
        {
            _database.Together(collection =>
            {
                if (Find(revision.BriefId, revision.Number) is null)
                    collection(Collection).Insert(Document(revision));
                DayHeadStore.Forget(collection, revision);
                DayHeadStore.Put(collection, DayHead.Of(revision, revision.Number));
            });
        }

        foreach (var revision in day)
        {
            if (WithdrawalOf(revision.BriefId) is not null)
                _database.Together(collection => DayHeadStore.Withdraw(collection, revision.SiteId, revision.Date, revision.BriefId));
        }
    }

    private void Keep(Revision revision, Action<Func<string, ILiteCollection<BsonDocument>>>? along = null) => _database.Together(collection =>
    {
        collection(Collection).Insert(Document(revision));
        DayHeadStore.Put(collection, DayHead.Of(revision, revision.Number));
        along?.Invoke(collection);
    });

    public Revision? Find(string briefId, int number) =>
        _database.Collection(Collection).FindById(Revision.IdOf(briefId, number)) is { } found ? Of(found) : null;

    /// <summary>The last revision of a brief; null when none was signed. Another brief may have taken its place since.</summary>
    public Revision? Latest(string briefId) =>
        _database.Collection(Collection).Find(Query.EQ("brief", briefId)).MaxBy(found => found["number"].AsInt32) is { } last ? Of(last) : null;

    /// <summary>Its number, without reading what was signed.</summary>
    public int? LatestNumber(string briefId) =>
        _database.Collection(Collection).Query().Where(Query.EQ("brief", briefId)).Select("{ number }").ToEnumerable().Select(found => (int?)found["number"].AsInt32).Max();

    /// <summary>The revision that holds for a field and day, withdrawn or not; null when none was signed.</summary>
    public Revision? Holding(string siteId, DateOnly date) => _heads.Find(siteId, date) is { } head ? Find(head.BriefId, head.Number) : null;

    /// <summary>Everything signed for a field and day, each in place of the one before.</summary>
    public IReadOnlyList<Revision> OfDay(string siteId, DateOnly date) =>
        [.. OrderOf(siteId, date).Select(one => Find(one.BriefId, one.Number)).OfType<Revision>()];

    /// <summary>The same, by brief and number only.</summary>
    public IReadOnlyList<(string BriefId, int Number)> OrderOf(string siteId, DateOnly date) => _heads.OrderOf(siteId, date);

    /// <summary>The revision whose place this one took; null for the first of its field and day.</summary>
    public Revision? Before(Revision revision) => OrderOf(revision.SiteId, revision.Date)
        .TakeWhile(one => one != (revision.BriefId, revision.Number)).TakeLast(1).Select(one => Find(one.BriefId, one.Number)).SingleOrDefault();

    /// <summary>All revisions of a brief, the first first.</summary>
    public IReadOnlyList<Revision> Of(string briefId) =>
        [.. _database.Collection(Collection).Find(Query.EQ("brief", briefId)).Select(Of).OrderBy(revision => revision.Number)];

    public bool IsEmpty => _database.Collection(Collection).Count() == 0;

    /// <summary>Whether a brief was ever signed.</summary>
    public bool IsSigned(string briefId) => _database.Collection(Collection).Exists(Query.EQ("brief", briefId));

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
        _database.Together(collection =>
        {
            collection(Collection).Delete(revision.Id);
            collection(Withdrawn).Delete(revision.BriefId);
            DayHeadStore.Forget(collection, revision);
        });
        _journal.Forgotten(revision);
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

    /// <summary>Takes back the brief that a revision is the last of.</summary>
    /// <param name="latest">The last revision of the brief.</param>
    /// <param name="withdrawal">By whom, when and why.</param>
    /// <param name="along">What is written in the same transaction.</param>
    public void Withdraw(Revision latest, Withdrawal withdrawal, Action<Func<string, ILiteCollection<BsonDocument>>>? along = null)
    {
        _journal.Withdrawn(latest.BriefId, withdrawal);
        Keep(latest, withdrawal, along);
    }

    private void Keep(Revision latest, Withdrawal withdrawal, Action<Func<string, ILiteCollection<BsonDocument>>>? along = null) => _database.Together(collection =>
    {
        collection(Withdrawn).Upsert(new BsonDocument
        {
            ["_id"] = latest.BriefId,
            ["at"] = withdrawal.At.ToUnixTimeMilliseconds(),
            ["withdrawal"] = JsonSerializer.Serialize(withdrawal, Json.Line),
        });
        DayHeadStore.Withdraw(collection, latest.SiteId, latest.Date, latest.BriefId);
        along?.Invoke(collection);
    });

    /// <summary>A brief that is signed again is no longer withdrawn.</summary>
    public Withdrawal? WithdrawalOf(string briefId) =>
        _database.Collection(Withdrawn).FindById(briefId) is { } found
        && JsonSerializer.Deserialize<Withdrawal>(found["withdrawal"].AsString, Json.Line) is { } withdrawal
        && !(Latest(briefId)?.SignedAt > withdrawal.At)
            ? withdrawal
            : null;

    /// <summary>For revisions that were signed before one of a field and day took the place of another: the last signed holds.</summary>
    private void MakeHeads()
    {
        var days = _database.Collection(Collection).FindAll().Select(Of).GroupBy(revision => (revision.SiteId, revision.Date)).ToArray();
        foreach (var day in days)
        {
            var place = 0;
            foreach (var revision in day.OrderBy(revision => revision.SignedAt).ThenBy(revision => revision.Number))
            {
                place = Math.Max(place + 1, revision.Number);
                var head = DayHead.Of(revision, place) with { IsWithdrawn = WithdrawalOf(revision.BriefId) is not null };
                _database.Together(collection => DayHeadStore.Put(collection, head));
            }
        }
    }

    private static BsonDocument Document(Revision revision) => new()
    {
        ["_id"] = revision.Id,
        ["brief"] = revision.BriefId,
        ["number"] = revision.Number,
        ["site"] = revision.SiteId,
        ["date"] = revision.Date.DayNumber,
        ["signedAt"] = revision.SignedAt.ToUnixTimeMilliseconds(),
        ["text"] = revision.Text,
        ["hash"] = revision.Hash,
    };

    private static Revision Of(BsonDocument document) => Revision.Open(document["text"].AsString, document["hash"].AsString);
}
