using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Features.People;
using DayBrief.Service.Languages;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.Briefs;

/// <summary>A brief in the list of all.</summary>
internal sealed record ListedBrief(string Id, DateOnly Date, string Site, string? Remark);

/// <summary>All days that stay reachable: what was signed, and the demonstration; drafts only for those who prepare them; none of a site whose code this
/// reader has not given.</summary>
internal static class ListBriefs
{
    internal static void Map(WebApplication app) => app.MapGet("/briefs", Show).ExcludeFromDescription();

    private static RazorComponentResult<BriefList> Show(BriefStore briefs, RevisionStore revisions, HttpContext context)
    {
        var language = Language.Of(context.Request);
        return new(new Dictionary<string, object?>
        {
            [nameof(BriefList.Briefs)] = Entries(briefs, revisions, language, DraftAccess.MayRead(context), site => ReaderCodeCheck.MayRead(context, site)),
            [nameof(BriefList.In)] = language,
        });
    }

    private static IReadOnlyList<ListedBrief> Entries(
        BriefStore briefs, RevisionStore revisions, Language language, bool withDrafts, Func<string, bool> mayRead)
    {
        var signed = revisions.Newest().ToDictionary(revision => revision.BriefId);
        return
        [
            .. signed.Values.Where(revision => mayRead(revision.SiteId)).Select(revision => Entry(revision, revisions, language))
                .Concat(briefs.Newest()
                    .Where(draft => draft is { Inputs: not null, DiscardedAt: null } && (withDrafts || draft.Demonstration) && !signed.ContainsKey(draft.Id) && mayRead(draft.SiteId))
                    .Select(draft => new ListedBrief(
                        draft.Id, draft.Date, draft.Inputs!.Site.Name ?? draft.SiteId,
                        language[draft.Demonstration ? "invented, for demonstration" : "draft, not signed [in a list]"])))
                .OrderByDescending(entry => entry.Date),
        ];
    }

    private static ListedBrief Entry(Revision revision, RevisionStore revisions, Language language) => new(
        revision.BriefId,
        revision.Date,
        revision.Inputs.Site.Name ?? revision.SiteId,
        revisions.WithdrawalOf(revision.BriefId) is not null
            ? language["withdrawn"]
            : language.Say($"revision {revision.Number}, signed by {revision.SignedBy}"));
}
