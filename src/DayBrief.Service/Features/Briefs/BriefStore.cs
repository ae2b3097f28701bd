using System.Security.Cryptography;
using DayBrief.Service.Infrastructure;
using LiteDB;

namespace DayBrief.Service.Features.Briefs;

/// <summary>Keeps the inputs of briefs; the brief itself is computed from them.</summary>
internal sealed class BriefStore(Database database)
{
    private const string Collection = "briefs";

    public static string NewId() => Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(5));

    public void Save(string id, BriefInputs inputs) =>
        database.Write(Collection, briefs => briefs.Upsert(new BsonDocument
        {
            ["_id"] = id,
            ["date"] = inputs.Date.DayNumber,
            ["preparedAt"] = inputs.PreparedAt.ToUnixTimeMilliseconds(),
            ["inputs"] = System.Text.Json.JsonSerializer.Serialize(inputs, Json.Line),
        }));

    public BriefInputs? Find(string id) =>
        database.Collection(Collection).FindById(id) is { } found ? Inputs(found) : null;

    /// <summary>All briefs, newest day first, then newest made.</summary>
    public IReadOnlyList<(string Id, BriefInputs Inputs)> All() =>
    [
        .. database.Collection(Collection).FindAll()
            .OrderByDescending(brief => brief["date"].AsInt32)
            .ThenByDescending(brief => brief["preparedAt"].AsInt64)
            .ThenBy(brief => brief["_id"].AsString, StringComparer.Ordinal)
            .Select(brief => (brief["_id"].AsString, Inputs(brief))),
    ];

    private static BriefInputs Inputs(BsonDocument document) =>
        System.Text.Json.JsonSerializer.Deserialize<BriefInputs>(document["inputs"].AsString, Json.Line)!;
}
