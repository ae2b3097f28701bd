using DayBrief.Service.Infrastructure;
using LiteDB;
using JsonSerializer = System.Text.Json.JsonSerializer;

namespace DayBrief.Service.Features.Sites;

/// <summary>A site as it is kept, with how often it has been changed.</summary>
/// <param name="Site">The site.</param>
/// <param name="Version">1 when new; one more with each change.</param>
internal sealed record KeptSite(SiteJson Site, int Version);

/// <summary>Keeps the sites that briefs are made for.</summary>
internal sealed class SiteStore(Database database)
{
    private const string Collection = "sites";

    /// <summary>A site is now like this, without anything when it was removed; told before whoever changed it goes on.</summary>
    public event Action<SiteJson>? Changed;

    /// <summary>Keeps a site, whatever was there.</summary>
    public void Save(SiteJson site) => Save(site, expected: null);

    /// <summary>Keeps a site as its next version, if it is still at the version that the editor saw: 0 for none yet, null for
    /// whatever is there.</summary>
    /// <returns>The new version; null when somebody else was first.</returns>
    public int? Save(SiteJson site, int? expected)
    {
        int? kept = null;
        database.Write(Collection, sites =>
        {
            var version = VersionOf(sites.FindById(site.Id));
            if (expected is { } seen && seen != version)
                return;
            kept = version + 1;
            sites.Upsert(Document(site, version + 1));
        });
        if (kept is not null)
            Changed?.Invoke(site);
        return kept;
    }

    /// <summary>Keeps several sites, all of them or, when somebody else was first with one, none.</summary>
    /// <param name="sites">Each with the version that was seen.</param>
    public bool SaveAll(IReadOnlyList<KeptSite> sites)
    {
        var kept = false;
        database.Write(Collection, collection =>
        {
            if (sites.Any(seen => VersionOf(collection.FindById(seen.Site.Id)) != seen.Version))
                return;
            collection.Upsert(sites.Select(seen => Document(seen.Site, seen.Version + 1)));
            kept = true;
        });
        foreach (var changed in kept ? sites : [])
            Changed?.Invoke(changed.Site);
        return kept;
    }

    /// <summary>Removes a site that is still at the version seen (null: whatever is there).</summary>
    public bool Remove(string id, int? expected)
    {
        var removed = false;
        database.Write(Collection, sites =>
            removed = (expected is null || VersionOf(sites.FindById(id)) == expected) && sites.Delete(id));
        if (removed)
            Changed?.Invoke(new SiteJson { Id = id });
        return removed;
    }

    public SiteJson? Find(string id) => FindKept(id)?.Site;

    public KeptSite? FindKept(string id) =>
        database.Collection(Collection).FindById(id) is { } found ? Of(found) : null;

    public IReadOnlyList<SiteJson> All() => [.. AllKept().Select(kept => kept.Site)];

    public IReadOnlyList<KeptSite> AllKept() =>
        [.. database.Collection(Collection).FindAll().Select(Of).OrderBy(kept => kept.Site.Name, StringComparer.Ordinal)];

    private static KeptSite Of(BsonDocument found) => new(SiteJson.Parse(found["site"].AsString), VersionOf(found));

    /// <summary>Sites of earlier programs had no version: they count as changed once.</summary>
    private static int VersionOf(BsonDocument? found) =>
        found is null ? 0 : found["version"].IsNumber ? found["version"].AsInt32 : 1;

    private static BsonDocument Document(SiteJson site, int version) => new()
    {
        ["_id"] = site.Id,
        ["site"] = JsonSerializer.Serialize(site, Json.Line),
        ["version"] = version,
    };
}
