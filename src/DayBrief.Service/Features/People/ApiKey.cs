namespace DayBrief.Service.Features.People;

/// <summary>A key for programs. The key itself is shown once and not kept.</summary>
internal sealed record ApiKey
{
    public required string Id { get; init; }

    /// <summary>What it is for.</summary>
    public required string Name { get; init; }

    public required KeyScope Scope { get; init; }

    /// <summary>Its first characters, to tell keys apart.</summary>
    public required string Start { get; init; }

    public required string Hash { get; init; }

    public required DateTimeOffset MadeAt { get; init; }

    public DateTimeOffset? ExpiresAt { get; init; }

    public DateTimeOffset? LastUsedAt { get; init; }

    public DateTimeOffset? RevokedAt { get; init; }

    public bool WorksAt(DateTimeOffset now) => RevokedAt is null && !(ExpiresAt <= now);
}
