using DayBrief.Service.Features.Soundings;

namespace DayBrief.Service.Features.Automation.Fetching;

/// <summary>How long and how much a fetch may take.</summary>
internal sealed record FetchLimits
{
    /// <summary>One attempt from the first byte sent to the last received.</summary>
    public TimeSpan Whole { get; init; } = TimeSpan.FromSeconds(60);

    /// <summary>Waiting for the next bytes, and for a connection.</summary>
    public TimeSpan Silence { get; init; } = TimeSpan.FromSeconds(15);

    /// <summary>Bytes of a body after decompression.</summary>
    public int MaxBytes { get; init; } = SoundingBody.MaxBytes;

    public int Redirects { get; init; } = 5;

    /// <summary>Attempts after the first, for failures that may pass.</summary>
    public int Retries { get; init; } = 2;

    /// <summary>Before the first further attempt; doubled for each one more.</summary>
    public TimeSpan FirstDelay { get; init; } = TimeSpan.FromSeconds(2);

    /// <summary>A server that asks for more (Retry-After) is asked again later, by the schedule.</summary>
    public TimeSpan LongestDelay { get; init; } = TimeSpan.FromSeconds(30);
}
