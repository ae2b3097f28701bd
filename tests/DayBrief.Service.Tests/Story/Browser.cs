using Microsoft.Playwright;

namespace DayBrief.Service.Story;

/// <summary>The chromium of this machine; tests skip with the reason where there is none, and fail in CI.</summary>
internal static class Browser
{
    private static readonly string[] Names = ["chromium", "chromium-browser", "google-chrome"];

    private static readonly string[] Quiet =
        ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"];

    public static async Task<IBrowser> LaunchAsync(IPlaywright playwright)
    {
        var path = Find();
        if (path is null && Environment.GetEnvironmentVariable("CI") is { Length: > 0 })
            Assert.Fail("No chromium on the PATH, and CI must not skip the page tests: .ci/install-browser installs it.");
        Assert.SkipWhen(path is null, "No chromium on the PATH: .ci/install-browser installs one.");
        return await playwright.Chromium.LaunchAsync(new() { ExecutablePath = path, Args = Quiet });
    }

    private static string? Find() =>
        (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
            .SelectMany(folder => Names.Select(name => Path.Combine(folder, name)))
            .FirstOrDefault(File.Exists);
}
