using DayBrief.Service.Languages;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.Briefs;

/// <summary>The way from a new installation to its first brief, step by step.</summary>
internal static class ShowFirstSteps
{
    public const string Address = "/begin";

    internal static void Map(WebApplication app) => app.MapGet(Address, Show).ExcludeFromDescription();

    private static RazorComponentResult<FirstStepsPage> Show(HttpContext context, FirstSteps steps)
    {
        var language = Language.Of(context.Request);
        return new(new Dictionary<string, object?> { [nameof(FirstStepsPage.In)] = language, [nameof(FirstStepsPage.Of)] = steps.Of(language) });
    }
}
