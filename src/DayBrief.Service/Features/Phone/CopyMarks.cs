using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.Technique;
using DayBrief.Service.Infrastructure;
using DayBrief.Service.Languages;
using Microsoft.AspNetCore.Http.Extensions;

namespace DayBrief.Service.Features.Phone;

/// <summary>Marks answers for the phone's worker: with what they show, so that it drops what is no longer so; and, if it may keep
/// them, with the reader's choice that they are for.</summary>
internal static class CopyMarks
{
    private const string State = "DayBrief-State";
    private const string Chosen = "DayBrief-Choice";
    private const string Instead = "DayBrief-Instead";

    public static void UseCopyMarks(this WebApplication app) =>
        app.Use((context, next) =>
        {
            if (FollowedPage.Of(context) is { } page)
                context.Response.OnStarting(() => Mark(context, page));
            return next();
        });

    private static Task Mark(HttpContext context, FollowedPage page)
    {
        var headers = context.Response.Headers;
        headers.CacheControl = "private, no-cache";
        if (context.Response.StatusCode == StatusCodes.Status200OK)
        {
            headers[State] = page.State;
            // Ids are of letters and digits where they are ours; one that is not could not be told from the next.
            if (page.Made?.Standing is { ReplacedBy: null, InsteadOf: { Count: > 0 } others })
                headers[Instead] = string.Join(' ', others.Where(id => id.All(char.IsAsciiLetterOrDigit)));
            if (page.MayBeKept)
                headers[Chosen] = ChoiceOf(context.Request, page);
        }

        return Task.CompletedTask;
    }

    private static string ChoiceOf(HttpRequest request, FollowedPage page)
    {
        var made = page.Made!;
        var choice = new QueryBuilder { { "language", Language.Of(request, made.Inputs.Site.Language).Code } };
        if (!page.IsPage)
            return choice.ToString()[1..];
        choice.Add(UnitsChoice.Parameter, Choice.NameOf(Reader.Of(made.Brief.Site, UnitsChoice.Of(request)).Units));
        choice.Add(Scheme.Parameter, Scheme.Of(request));
        return $"{choice.ToString()[1..]}&{Pilot.Of(request).Query}";
    }
}
