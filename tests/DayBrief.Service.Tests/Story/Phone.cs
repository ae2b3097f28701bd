using Microsoft.Playwright;

namespace DayBrief.Service.Story;

/// <summary>A phone with a browser: one that keeps cookies, copies and a service worker of its own.</summary>
internal sealed class Phone : IAsyncDisposable
{
    private Phone(IBrowserContext context, IPage page) => (Context, Page) = (context, page);

    public IBrowserContext Context { get; }

    public IPage Page { get; }

    public static async Task<Phone> OpenAsync(ServiceHost host, int width = 360, ColorScheme scheme = ColorScheme.Light, bool script = true, string locale = "en-GB", int height = 740)
    {
        var context = await Browser.ContextAsync(new()
        {
            BaseURL = host.Address.ToString(),
            ViewportSize = new() { Width = width, Height = height },
            ColorScheme = scheme,
            JavaScriptEnabled = script,
            Locale = locale,
        });
        return new(context, await context.NewPageAsync());
    }

    /// <summary>Addresses of the pages and files that the phone keeps, without the choices they are for.</summary>
    public Task<string[]> CopiesAsync() => Page.EvaluateAsync<string[]>(
        "async () => (await (await caches.open('daybrief-pages-1')).keys()).map(key => new URL(key.url).pathname)");

    /// <summary>Waits until these are kept.</summary>
    public async Task KeptAsync(params string[] paths)
    {
        string[] kept = [];
        await Eventually.TrueAsync(
            async () => paths.All((kept = await CopiesAsync()).Contains), () => $"Kept: {string.Join(' ', kept)}", TestContext.Current.CancellationToken);
    }

    public Task<string> StateAsync() => Page.Locator("#copy").GetAttributeAsync("data-state")!;

    public ValueTask DisposeAsync() => Context.DisposeAsync();
}
