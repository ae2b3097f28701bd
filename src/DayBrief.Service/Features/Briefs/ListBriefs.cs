using System.Globalization;
using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Features.People;
using DayBrief.Service.Languages;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.Briefs;

/// <summary>A brief in the list of all.</summary>
internal sealed record ListedBrief(string Id, DateOnly Date, string Site, string? Remark);

/// <summary>All days that stay reachable, so many at a time: what was signed, and the demonstration; drafts only for those who prepare
/// them; none of a site whose code this reader has not given.</summary>
internal static class ListBriefs
{
    private const int OnePage = 100;

    internal static void Map(WebApplication app) => app.MapGet("/briefs", Show).ExcludeFromDescription();

    /// <param name="briefs">Drafts.</param>
    /// <param name="revisions">What was signed.</param>
    /// <param name="heads">What holds.</param>
    /// <param name="context">Who asks.</param>
    /// <param name="before">Only days before, as year-month-day: the next page.</param>
    private static RazorComponentResult<BriefList> Show(
        BriefStore briefs, RevisionStore revisions, DayHeadStore heads, HttpContext context, string? before)
    {
        var language = Language.Of(context.Request);
        var until = DateOnly.TryParseExact(before, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var asked) ? asked : DateOnly.MaxValue;
        var signed = OfDays(heads.Before(until).Where(head => ReaderCodeCheck.MayRead(context, head.SiteId)), out var next);
        return new(new Dictionary<string, object?>
        {
            [nameof(BriefList.Briefs)] = Sorted(signed.Select(head => Entry(head, language)).Concat(Drafts(briefs, revisions, context, language, until, next))),
            [nameof(BriefList.Before)] = next,
            [nameof(BriefList.In)] = language,
        });
    }

    /// <summary>Whole days until a page is full; the last of them when there are more.</summary>
    private static List<DayHead> OfDays(IEnumerable<DayHead> heads, out DateOnly? next)
    {
        var page = new List<DayHead>();
        next = null;
        foreach (var head in heads)
        {
            if (page.Count >= OnePage && page[^1].Date != head.Date)
            {
                next = page[^1].Date;
                break;
            }

            page.Add(head);
        }

        return page;
    }

    /// <summary>Those of the days of this page.</summary>
    private static IEnumerable<ListedBrief> Drafts(
        BriefStore briefs, RevisionStore revisions, HttpContext context, Language language, DateOnly until, DateOnly? from) =>
        briefs.Newest()
            .Where(draft => draft is { Inputs: not null, DiscardedAt: null } && (draft.Demonstration || DraftAccess.MayRead(context)) && draft.Date < until && !(draft.Date < from)
                && !revisions.IsSigned(draft.Id) && ReaderCodeCheck.MayRead(context, draft.SiteId))
            .Select(draft => new ListedBrief(
                draft.Id, draft.Date, draft.Inputs!.Site.Name ?? draft.SiteId,
                language[draft.Demonstration ? "invented, for demonstration" : "draft, not signed [in a list]"]));

    private static ListedBrief Entry(DayHead head, Language language) => new(
        head.BriefId,
        head.Date,
        head.SiteName,
        head.IsWithdrawn ? language["withdrawn"] : language.Say($"revision {head.Number}, signed by {head.SignedBy}"));

    private static ListedBrief[] Sorted(IEnumerable<ListedBrief> entries) => [.. entries.OrderByDescending(entry => entry.Date)];
}
