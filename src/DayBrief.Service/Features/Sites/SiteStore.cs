using DayBrief.Service.Infrastructure;
using LiteDB;

namespace DayBrief.Service.Features.Sites;

/// <summary>Keeps the sites that briefs are made for.</summary>
internal sealed class SiteStore(Database database)
{
    private const string Collection = "sites";

    public void Save(SiteJson site) =>
        database.Write(Collection, sites => sites.Upsert(new BsonDocument
        {
            ["_id"] = site.Id,
            ["site"] = System.Text.Json.JsonSerializer.Serialize(site, Json.Line),
        }));

    public SiteJson? Find(string id) =>
        database.Collection(Collection).FindById(id) is { } found ? SiteJson.Parse(found["site"].AsString) : null;

    public IReadOnlyList<SiteJson> All() =>
        [.. database.Collection(Collection).FindAll().Select(found => SiteJson.Parse(found["site"].AsString)).OrderBy(site => site.Name, StringComparer.Ordinal)];
}
