namespace DayBrief.Service;

/// <summary>A clock that stands until a test moves it.</summary>
internal sealed class SetClock(DateTimeOffset start) : TimeProvider
{
    public DateTimeOffset Now { get; set; } = start;

    public override DateTimeOffset GetUtcNow() => Now;
}
