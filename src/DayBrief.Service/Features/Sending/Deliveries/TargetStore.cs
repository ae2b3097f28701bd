using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Infrastructure;
using LiteDB;

namespace DayBrief.Service.Features.Sending.Deliveries;

/// <summary>Since when each address is told: what was signed before it was entered is not sent to it.</summary>
internal sealed class TargetStore(Database database, TimeProvider clock)
{
    private const string Collection = "sendingTargets";

    /// <summary>Takes up the addresses of a site as they are now, and forgets those that are gone.</summary>
    public void Follow(SiteJson site)
    {
        var now = clock.GetUtcNow().ToUnixTimeMilliseconds();
        var wanted = Target.Of(site).ToDictionary(KeyOf);
        if (wanted.Count == 0 && !database.Collection(Collection).Exists(Query.EQ("site", site.Id)))
            return;
        database.Write(Collection, targets =>
        {
            foreach (var gone in targets.Find(Query.EQ("site", site.Id)).Where(target => !wanted.ContainsKey(target["_id"].AsString)).ToArray())
                targets.Delete(gone["_id"]);
            foreach (var (key, target) in wanted.Where(target => targets.FindById(target.Key) is null))
                targets.Insert(new BsonDocument { ["_id"] = key, ["site"] = target.SiteId, ["since"] = now, ["plannedTo"] = now });
        });
    }

    /// <summary>Since when it is told, and until when all of that is in the ledger; null when it is not known.</summary>
    public (DateTimeOffset Since, DateTimeOffset PlannedTo)? Find(Target target) =>
        database.Collection(Collection).FindById(KeyOf(target)) is { } found ? (Time(found["since"]), Time(found["plannedTo"])) : null;

    public void Planned(Target target, DateTimeOffset to) =>
        database.Write(Collection, targets =>
        {
            if (targets.FindById(KeyOf(target)) is not { } found)
                return;
            found["plannedTo"] = to.ToUnixTimeMilliseconds();
            targets.Update(found);
        });

    /// <summary>Addresses may be longer than a key of the store.</summary>
    internal static string KeyOf(Target target) =>
        $"{target.SiteId}|{Choice.NameOf(target.Channel)}|{Revision.HashOf(System.Text.Encoding.UTF8.GetBytes(target.Address))[..24]}";

    private static DateTimeOffset Time(BsonValue value) => DateTimeOffset.FromUnixTimeMilliseconds(value.AsInt64);
}
