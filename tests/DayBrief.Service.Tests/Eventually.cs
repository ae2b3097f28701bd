namespace DayBrief.Service;

/// <summary>Waits for what happens in the background. The limit only ends a test whose event never comes: a busy machine may
/// take long for what a free one does at once.</summary>
internal static class Eventually
{
    public static readonly TimeSpan Limit = TimeSpan.FromMinutes(4);

    public static Task TrueAsync(Func<bool> condition, CancellationToken stopping) =>
        TrueAsync(() => Task.FromResult(condition()), () => "it has not happened", stopping);

    /// <summary>Asks again and again; says at the end what was there instead.</summary>
    public static async Task TrueAsync(Func<Task<bool>> condition, Func<string> otherwise, CancellationToken stopping)
    {
        for (var began = TimeProvider.System.GetTimestamp(); !await condition();)
        {
            Assert.True(TimeProvider.System.GetElapsedTime(began) < Limit, otherwise());
            await Task.Delay(50, stopping);
        }
    }
}
