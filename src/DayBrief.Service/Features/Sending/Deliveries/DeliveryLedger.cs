using DayBrief.Service.Infrastructure;
using LiteDB;

namespace DayBrief.Service.Features.Sending.Deliveries;

/// <summary>Every delivery and how it went: what makes it happen once, survive a restart, and be seen.</summary>
internal sealed class DeliveryLedger
{
    private const string Collection = "deliveries";

    private readonly Database _database;

    public DeliveryLedger(Database database)
    {
        _database = database;
        database.Write(Collection, deliveries =>
        {
            deliveries.EnsureIndex("state");
            deliveries.EnsureIndex("noticeAt");
        });
    }

    /// <summary>Adds what is not there yet.</summary>
    public void Add(IEnumerable<Delivery> deliveries) =>
        _database.Write(Collection, kept =>
        {
            foreach (var delivery in deliveries.Where(delivery => kept.FindById(delivery.Id) is null))
                kept.Insert(DeliveryDocument.Write(delivery));
        });

    public void Update(Delivery delivery) =>
        _database.Write(Collection, deliveries => deliveries.Update(DeliveryDocument.Write(delivery)));

    public Delivery? Find(string id) => _database.Collection(Collection).FindById(id) is { } found ? DeliveryDocument.Read(found) : null;

    /// <summary>What waits, whether its time has come or not, oldest notice first.</summary>
    public IReadOnlyList<Delivery> Waiting() =>
    [
        .. _database.Collection(Collection).Find(Query.EQ("state", Choice.NameOf(DeliveryState.Waiting)))
            .Select(DeliveryDocument.Read)
            .OrderBy(delivery => delivery.NoticeAt),
    ];

    /// <summary>The latest of a site, newest notice first.</summary>
    public IReadOnlyList<Delivery> Latest(string siteId, int most) =>
    [
        .. _database.Collection(Collection).Query().OrderByDescending("noticeAt").ToEnumerable()
            .Where(document => document["site"].AsString == siteId)
            .Take(most)
            .Select(DeliveryDocument.Read),
    ];

    public void Forget(DateTimeOffset before) =>
        _database.Write(Collection, deliveries => deliveries.DeleteMany(Query.LT("noticeAt", before.ToUnixTimeMilliseconds())));
}
