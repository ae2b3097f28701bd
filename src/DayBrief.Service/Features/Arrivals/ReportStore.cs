using System.Security.Cryptography;
using System.Text;
using DayBrief.Service.Infrastructure;
using LiteDB;

namespace DayBrief.Service.Features.Arrivals;

/// <summary>Keeps the reports that were fetched, each once.</summary>
internal sealed class ReportStore(Database database)
{
    private const string Collection = "reports";

    /// <summary>Keeps what is new and tells how many that were.</summary>
    public int Add(IEnumerable<KeptReport> reports)
    {
        var added = 0;
        database.Write(Collection, kept =>
        {
            foreach (var report in reports)
            {
                var key = Key(report);
                if (kept.FindById(key) is not null)
                    continue;
                kept.Insert(Document(key, report));
                added++;
            }
        });
        return added;
    }

    /// <summary>The reports of a site in a span of time, oldest first.</summary>
    public IReadOnlyList<KeptReport> Of(string siteId, ReportKind kind, DateTimeOffset from, DateTimeOffset to) =>
    [
        .. database.Collection(Collection)
            .Find(Query.And(Query.EQ("site", siteId), Query.Between("at", from.ToUnixTimeMilliseconds(), to.ToUnixTimeMilliseconds())))
            .Select(Report)
            .Where(report => report.Kind == kind)
            .OrderBy(report => report.At)
            .ThenBy(report => report.ArrivedAt),
    ];

    /// <summary>The latest of a span; null when there is none.</summary>
    public KeptReport? Latest(string siteId, ReportKind kind, DateTimeOffset from, DateTimeOffset to) =>
        Of(siteId, kind, from, to) is [.., var latest] ? latest : null;

    public int Forget(DateTimeOffset before)
    {
        var count = 0;
        database.Write(Collection, reports => count = reports.DeleteMany(Query.LT("at", before.ToUnixTimeMilliseconds())));
        return count;
    }

    private static string Key(KeptReport report) =>
        $"{report.SiteId}|{Choice.NameOf(report.Kind)}|{Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes($"{report.At:O} {report.Raw}")))[..24]}";

    private static BsonDocument Document(string key, KeptReport report) => new()
    {
        ["_id"] = key,
        ["site"] = report.SiteId,
        ["kind"] = Choice.NameOf(report.Kind),
        ["station"] = report.Station,
        ["at"] = report.At.ToUnixTimeMilliseconds(),
        ["raw"] = report.Raw,
        ["origin"] = report.Origin,
        ["arrivedAt"] = report.ArrivedAt.ToUnixTimeMilliseconds(),
    };

    private static KeptReport Report(BsonDocument found) => new(
        found["site"].AsString,
        Choice.Parse<ReportKind>(found["kind"].AsString)!.Value,
        found["station"].AsString,
        DateTimeOffset.FromUnixTimeMilliseconds(found["at"].AsInt64),
        found["raw"].AsString,
        found["origin"].AsString,
        DateTimeOffset.FromUnixTimeMilliseconds(found["arrivedAt"].AsInt64));
}
