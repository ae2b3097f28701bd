namespace DayBrief.Service.Features.Sending.Deliveries;

/// <summary>How long after a failed attempt the next follows. After the last the delivery is given up: a brief is for a day.</summary>
internal static class RetryPauses
{
    private static readonly int[] Minutes = [1, 2, 5, 15, 30, 60, 60, 60, 60, 60];

    public static int MostAttempts => Minutes.Length + 1;

    /// <summary>Null when it is given up.</summary>
    /// <param name="attempts">How many were begun.</param>
    /// <param name="asked">How long the other side asks to wait; at most two hours are granted.</param>
    public static TimeSpan? After(int attempts, TimeSpan? asked = null)
    {
        if (attempts > Minutes.Length)
            return null;
        var pause = TimeSpan.FromMinutes(Minutes[Math.Max(0, attempts - 1)]);
        return asked > pause ? TimeSpan.FromTicks(Math.Min(asked.Value.Ticks, TimeSpan.FromHours(2).Ticks)) : pause;
    }
}
