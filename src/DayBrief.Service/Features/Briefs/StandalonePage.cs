using DayBrief.Service.Features.Technique;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.Logging.Abstractions;

namespace DayBrief.Service.Features.Briefs;

/// <summary>The phone page with its style sheet inside, so that one file is enough.</summary>
internal static class StandalonePage
{
    private const string Link = "<link rel=\"stylesheet\" href=\"/daybrief.css\">";

    public static async Task<string> RenderAsync(
        MadeBrief made, Reader reader, DateTimeOffset now, object? technique = null, IReadOnlyList<TechniqueView>? groups = null)
    {
        await using var services = new ServiceCollection().BuildServiceProvider();
        await using var renderer = new HtmlRenderer(services, NullLoggerFactory.Instance);
        var html = await renderer.Dispatcher.InvokeAsync(async () =>
        {
            var page = await renderer.RenderComponentAsync<PhonePage>(ParameterView.FromDictionary(new Dictionary<string, object?>
            {
                [nameof(PhonePage.Made)] = made,
                [nameof(PhonePage.For)] = reader,
                [nameof(PhonePage.Now)] = now,
                [nameof(PhonePage.Kept)] = true,
                [nameof(PhonePage.Technique)] = technique,
                [nameof(PhonePage.Groups)] = groups,
            }));
            return page.ToHtmlString();
        });
        var style = await File.ReadAllTextAsync(Path.Combine(AppContext.BaseDirectory, "wwwroot", "daybrief.css"));
        return html.Contains(Link, StringComparison.Ordinal)
            ? html.Replace(Link, $"<style>{style}</style>", StringComparison.Ordinal)
            : throw new InvalidOperationException("The page links its style sheet in another way.");
    }
}
