using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(DayBrief.Service.Story.BrowserEnd))]

namespace DayBrief.Service.Story;

/// <summary>The chromium of this machine, started once for all tests, which have contexts of their own; tests skip with the
/// reason where there is none, and fail in CI.</summary>
internal static class Browser
{
    private static readonly string[] Names = ["chromium", "chromium-browser", "google-chrome"];

    private static readonly string[] Quiet =
        ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"];

    private static IPlaywright? _playwright;
    private static IBrowser? _browser;

    /// <summary>A browser that knows nothing yet: no cookies, no copies, no workers.</summary>
    public static async Task<IBrowserContext> ContextAsync(BrowserNewContextOptions options)
    {
        var context = await (await RunningAsync()).NewContextAsync(options);
        // Limits that only end what never comes: no test is about how fast this machine is.
        Assertions.SetDefaultExpectTimeout((float)Eventually.Limit.TotalMilliseconds);
        context.SetDefaultTimeout((float)Eventually.Limit.TotalMilliseconds);
        return context;
    }

    public static async Task StopAsync()
    {
        await (_browser?.DisposeAsync() ?? ValueTask.CompletedTask);
        _playwright?.Dispose();
        (_browser, _playwright) = (null, null);
    }

    /// <summary>Tests with a browser run in turn, so that no two start one.</summary>
    private static async Task<IBrowser> RunningAsync()
    {
        if (_browser is { IsConnected: true })
            return _browser;
        await StopAsync();
        var path = Find();
        if (path is null && Environment.GetEnvironmentVariable("CI") is { Length: > 0 })
            Assert.Fail("No chromium on the PATH, and CI must not skip the page tests: .ci/install-browser installs it.");
        Assert.SkipWhen(path is null, "No chromium on the PATH: .ci/install-browser installs one.");
        _playwright = await Playwright.CreateAsync();
        return _browser = await _playwright.Chromium.LaunchAsync(new() { ExecutablePath = path, Args = Quiet });
    }

    private static string? Find() =>
        (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
            .SelectMany(folder => Names.Select(name => Path.Combine(folder, name)))
            .FirstOrDefault(File.Exists);
}

/// <summary>Ends the browser when all tests have run.</summary>
public sealed class BrowserEnd : IAsyncDisposable
{
    public async ValueTask DisposeAsync() => await Browser.StopAsync();
}
