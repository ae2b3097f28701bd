namespace DayBrief.Service.Features.Automation;

/// <summary>When a failed run is tried again: with growing pauses, as long as its result is still of use.</summary>
internal static class RetryPlan
{
    private static readonly int[] Minutes = [2, 5, 10, 20];

    /// <summary>Null when it is given up.</summary>
    /// <param name="slot">What failed.</param>
    /// <param name="attempts">How often it was begun.</param>
    /// <param name="now">When it failed.</param>
    /// <param name="asked">How long the other machine asks to wait.</param>
    public static DateTimeOffset? Next(Slot slot, int attempts, DateTimeOffset now, TimeSpan? asked)
    {
        var pause = TimeSpan.FromMinutes(Minutes[Math.Min(attempts, Minutes.Length) - 1]);
        var next = now + (asked > pause ? asked.Value : pause);
        return next <= slot.DueAt + UsefulFor(slot.Job) ? next : null;
    }

    // An ascent or a draft serves until the afternoon; the next reports come by themselves.
    private static TimeSpan UsefulFor(AutomationJob job) => job switch
    {
        AutomationJob.Reports => TimeSpan.FromMinutes(25),
        AutomationJob.Reminder or AutomationJob.DropFolder => TimeSpan.FromHours(1),
        _ => TimeSpan.FromHours(6),
    };
}
