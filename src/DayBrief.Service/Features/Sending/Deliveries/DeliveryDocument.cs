using DayBrief.Service.Infrastructure;
using LiteDB;

namespace DayBrief.Service.Features.Sending.Deliveries;

/// <summary>A delivery as the store keeps it.</summary>
internal static class DeliveryDocument
{
    public static BsonDocument Write(Delivery delivery) => new()
    {
        ["_id"] = delivery.Id,
        ["site"] = delivery.Target.SiteId,
        ["channel"] = Choice.NameOf(delivery.Target.Channel),
        ["address"] = delivery.Target.Address,
        ["brief"] = delivery.BriefId,
        ["number"] = delivery.Number,
        ["withdrawnAt"] = Milliseconds(delivery.WithdrawnAt),
        ["date"] = delivery.Date.DayNumber,
        ["noticeAt"] = Milliseconds(delivery.NoticeAt),
        ["state"] = Choice.NameOf(delivery.State),
        ["attempts"] = delivery.Attempts,
        ["lastAt"] = Milliseconds(delivery.LastAt),
        ["nextAt"] = Milliseconds(delivery.NextAt),
        ["fault"] = delivery.Fault is { } fault ? Choice.NameOf(fault) : null,
        ["about"] = delivery.About,
    };

    public static Delivery Read(BsonDocument document) => new()
    {
        Id = document["_id"].AsString,
        Target = new(document["site"].AsString, Choice.Parse<Channel>(document["channel"].AsString)!.Value, document["address"].AsString),
        BriefId = document["brief"].AsString,
        Number = document["number"].AsInt32,
        WithdrawnAt = Time(document["withdrawnAt"]),
        Date = DateOnly.FromDayNumber(document["date"].AsInt32),
        NoticeAt = Time(document["noticeAt"])!.Value,
        State = Choice.Parse<DeliveryState>(document["state"].AsString)!.Value,
        Attempts = document["attempts"].AsInt32,
        LastAt = Time(document["lastAt"]),
        NextAt = Time(document["nextAt"])!.Value,
        Fault = Choice.Parse<SendFault>(document["fault"].AsString),
        About = document["about"].AsString,
    };

    private static BsonValue Milliseconds(DateTimeOffset? time) => time is { } known ? known.ToUnixTimeMilliseconds() : BsonValue.Null;

    private static DateTimeOffset? Time(BsonValue value) => value.IsNull ? null : DateTimeOffset.FromUnixTimeMilliseconds(value.AsInt64);
}
