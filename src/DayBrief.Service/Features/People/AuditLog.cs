using DayBrief.Service.Infrastructure;
using LiteDB;

namespace DayBrief.Service.Features.People;

/// <summary>Who changed what and when. Only ever added to.</summary>
internal sealed class AuditLog
{
    private const string Collection = "audit";

    private readonly Database _database;
    private readonly TimeProvider _clock;

    public AuditLog(Database database, TimeProvider clock)
    {
        (_database, _clock) = (database, clock);
        database.Write(Collection, audit => audit.EnsureIndex("at"));
    }

    /// <summary>Notes a change. Never put a secret into it.</summary>
    /// <param name="who">Null for nobody signed in: a trial, or the service by itself.</param>
    /// <param name="action">What was done, a short English text that is a key of the texts: "Signed a brief".</param>
    /// <param name="about">What it was done to, such as the id or name.</param>
    /// <param name="detail">What else a reader of the log needs.</param>
    public void Write(Who? who, string action, string about, string? detail = null) =>
        _database.Write(Collection, audit => audit.Insert(new BsonDocument
        {
            ["_id"] = (audit.FindOne(Query.All(Query.Descending))?["_id"].AsInt64 ?? 0) + 1,
            ["at"] = _clock.GetUtcNow().ToUnixTimeMilliseconds(),
            ["whoId"] = who?.Id,
            ["who"] = who?.Name,
            ["byKey"] = who?.ByKey ?? false,
            ["action"] = action,
            ["about"] = about,
            ["detail"] = detail,
        }));

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
