namespace DayBrief.Service;

/// <summary>Waits for what happens in the background.</summary>
internal static class Eventually
{
    public static async Task TrueAsync(Func<bool> condition, CancellationToken stopping)
    {
        for (var tries = 0; tries < 200 && !condition(); tries++)
            await Task.Delay(50, stopping);
        Assert.True(condition(), "it has not happened within ten seconds");
    }
}
