using DayBrief.Service.Features.Sending.Notices;

namespace DayBrief.Service.Features.Sending.Deliveries;

internal enum DeliveryState
{
    /// <summary>To be sent, for the first time or again.</summary>
    Waiting,

    /// <summary>The other side has taken it.</summary>
    Sent,

    /// <summary>Given up.</summary>
    Failed,

    /// <summary>Could not be sent before a later one of the same brief was due.</summary>
    Overtaken,
}

/// <summary>One notice to one address.</summary>
internal sealed record Delivery
{
    public required string Id { get; init; }

    public required Target Target { get; init; }

    public required string BriefId { get; init; }

    public required int Number { get; init; }

    public DateTimeOffset? WithdrawnAt { get; init; }

    public required DateOnly Date { get; init; }

    /// <summary>When it was signed or withdrawn.</summary>
    public required DateTimeOffset NoticeAt { get; init; }

    public DeliveryState State { get; init; }

    /// <summary>How often it was begun.</summary>
    public int Attempts { get; init; }

    public DateTimeOffset? LastAt { get; init; }

    /// <summary>Not before; of a waiting one.</summary>
    public DateTimeOffset NextAt { get; init; }

    public SendFault? Fault { get; init; }

    /// <summary>What the fault is about, such as the answer of the server.</summary>
    public string? About { get; init; }

    public static Delivery Of(Notice notice, Target target) => new()
    {
        Id = $"{notice.Id}|{TargetStore.KeyOf(target)}",
        Target = target,
        BriefId = notice.Revision.BriefId,
        Number = notice.Revision.Number,
        WithdrawnAt = notice.Withdrawal?.At,
        Date = notice.Revision.Date,
        NoticeAt = notice.At,
        NextAt = notice.At,
    };
}
