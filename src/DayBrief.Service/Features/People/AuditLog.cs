using DayBrief.Service.Infrastructure;
using DayBrief.Service.Infrastructure.Journals;
using LiteDB;
using JsonSerializer = System.Text.Json.JsonSerializer;

namespace DayBrief.Service.Features.People;

/// <summary>Who changed what and when. Only ever added to.</summary>
internal sealed class AuditLog
{
    private const string Collection = "audit";
    private const string JournalKind = "audit";

    private readonly Database _database;
    private readonly TimeProvider _clock;
    private readonly Journal _journal;

    public AuditLog(Database database, TimeProvider clock, Journal journal)
    {
        (_database, _clock, _journal) = (database, clock, journal);
        database.Write(Collection, audit => audit.EnsureIndex("at"));
        FinishLast();
    }

    /// <summary>Notes a change. Never put a secret into it.</summary>
    /// <param name="who">Null for nobody signed in: a trial, or the service by itself.</param>
    /// <param name="action">What was done, a short English text that is a key of the texts: "Signed a brief".</param>
    /// <param name="about">What it was done to, such as the id or name.</param>
    /// <param name="detail">What else a reader of the log needs.</param>
    public void Write(Who? who, string action, string about, string? detail = null) =>
        _database.Together(collection => Put(collection, (who?.Id, who?.Name, who?.ByKey ?? false), action, about, detail));

    /// <summary>The same within a write of several: the line is there if and only if what it tells of is.</summary>
    public void Put(
        Func<string, ILiteCollection<BsonDocument>> collection, (string? Id, string? Name, bool ByKey) who, string action, string about, string? detail)
    {
        var at = _clock.GetUtcNow().ToUnixTimeMilliseconds();
        var entry = new AuditEntry(DateTimeOffset.FromUnixTimeMilliseconds(at), who.Name, who.ByKey, action, about, detail);
        Insert(collection(Collection), entry, who.Id);
        _journal.Add(JournalKind, about, new() { ["line"] = SealedText(entry), ["whoId"] = who.Id });
    }

    /// <summary>The line that a stop of the program left between the journal and the store.</summary>
    private void FinishLast()
    {
        if (_journal.Entries.LastOrDefault(entry => entry.Kind == JournalKind) is not { } last)
            return;
        var entry = JsonSerializer.Deserialize<AuditEntry>((string)last.Content["line"]!, Json.Line)!;
        if (!Between(entry.At, entry.At.AddMilliseconds(1)).Contains(entry))
            _database.Write(Collection, audit => Insert(audit, entry, (string?)last.Content["whoId"]));
    }

    private static void Insert(ILiteCollection<BsonDocument> audit, AuditEntry entry, string? whoId) => audit.Insert(new BsonDocument
    {
        ["_id"] = (audit.FindOne(Query.All(Query.Descending))?["_id"].AsInt64 ?? 0) + 1,
        ["at"] = entry.At.ToUnixTimeMilliseconds(),
        ["whoId"] = whoId,
        ["who"] = entry.Who,
        ["byKey"] = entry.ByKey,
        ["action"] = entry.Action,
        ["about"] = entry.About,
        ["detail"] = entry.Detail,
    });

    /// <summary>Lines that were taken out since, or put in or changed; both only as far as the journal goes back.</summary>
    public (IReadOnlyList<string> Missing, IReadOnlyList<string> Foreign) AgainstJournal()
    {
        string[] noted = [.. _journal.Entries.Where(entry => entry.Kind == JournalKind).Select(entry => (string)entry.Content["line"]!)];
        if (noted.Length == 0)
            return ([], []);
        var kept = Between(DateTimeOffset.MinValue, DateTimeOffset.MaxValue);
        var begun = JsonSerializer.Deserialize<AuditEntry>(noted[0], Json.Line)!.At;
        string[] since = [.. kept.Where(entry => entry.At >= begun).Select(SealedText)];
        return (Less(noted, since), Less(since, noted));

        static string[] Less(string[] all, string[] others)
        {
            var left = others.GroupBy(line => line).ToDictionary(lines => lines.Key, lines => lines.Count());
            return [.. all.Where(line => !(left.TryGetValue(line, out var count) && count > 0 && left.Remove(line) && (count == 1 || left.TryAdd(line, count - 1))))];
        }
    }

    /// <summary>Somebody who could sign in has changed something here once, as the journal has it.</summary>
    public bool KnewSomebody => _journal.Entries.Any(entry => entry.Kind == JournalKind && entry.Content["whoId"] is not null);

    private static string SealedText(AuditEntry entry) => JsonSerializer.Serialize(entry, Json.Line);

    /// <summary>The entries of a span, newest first.</summary>
    public IReadOnlyList<AuditEntry> Between(DateTimeOffset from, DateTimeOffset to) =>
    [
        .. _database.Collection(Collection)
            .Find(Query.Between("at", from.ToUnixTimeMilliseconds(), to.ToUnixTimeMilliseconds() - 1))
            .OrderByDescending(entry => entry["_id"].AsInt64)
            .Select(Entry),
    ];

    private static AuditEntry Entry(BsonDocument entry) => new(
        DateTimeOffset.FromUnixTimeMilliseconds(entry["at"].AsInt64),
        entry["who"].AsString,
        entry["byKey"].AsBoolean,
        entry["action"].AsString,
        entry["about"].AsString,
        entry["detail"].AsString);
}

/// <summary>One line of the audit log.</summary>
/// <param name="At">When, in UTC.</param>
/// <param name="Who">Null for nobody signed in.</param>
/// <param name="ByKey">A program did it.</param>
/// <param name="Action">What was done.</param>
/// <param name="About">What it was done to.</param>
/// <param name="Detail">What else there is to know.</param>
internal sealed record AuditEntry(DateTimeOffset At, string? Who, bool ByKey, string Action, string About, string? Detail);
