using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Features.People;
using DayBrief.Service.Features.Sending.Notices;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Infrastructure;
using DayBrief.Service.Languages;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.Net.Http.Headers;

namespace DayBrief.Service.Features.Sending.Feed;

/// <summary>What a site has signed and withdrawn lately, as a feed.</summary>
internal static class ShowFeed
{
    private const int Most = 30;

    internal static void Map(WebApplication app) => app
        .MapGet("/fields/{site}/feed.atom", Handle)
        .AskReaderCode(context => context.GetRouteValue("site") as string)
        .ExcludeFromDescription();

    private static Results<FileContentHttpResult, RazorComponentResult<NotFoundPage>> Handle(
        string site, HttpContext context, SiteStore sites, NoticeStore notices, DayHeadStore heads, FeedEntryStore words, PublicAddress address, Installation installation)
    {
        if (sites.Find(site) is not { Sending.Feed: true } field)
            return NotFoundPage.Result("page [not found]");
        var language = Language.OfSite(field.Language);
        var (name, path) = (field.Name ?? site, $"/fields/{Uri.EscapeDataString(site)}");
        var entries = notices.Latest(site, Most).Select(Entry).ToArray();
        var feed = new AtomFeed(
            installation.IdOf($"feed {site}"),
            language.Say($"{name}: soaring briefs"),
            entries.Length > 0 ? entries.Max(entry => entry.ChangedAt) : installation.Since,
            name,
            address.Link($"{path}/feed.atom", context.Request),
            address.Link(path, context.Request),
            language.Code,
            entries).Bytes();
        context.Response.Headers.CacheControl = "no-cache";
        return TypedResults.File(feed, AtomFeed.MediaType, entityTag: new EntityTagHeaderValue($"\"{Revision.HashOf(feed)[..32]}\""));

        FeedEntry Entry(Notice notice)
        {
            var (title, summary) = words.TextOf(notice, language);
            var link = address.Link($"/briefs/{notice.Revision.BriefId}/revisions/{notice.Revision.Number}", context.Request);
            var entry = new FeedEntry(installation.IdOf($"feed {notice.Id}"), title, notice.At, notice.By, Choice.NameOf(notice.Kind), link, summary);
            return notice.Withdrawal is null && heads.Find(notice.Revision.SiteId, notice.Revision.Date) is { } head && head.RevisionId != notice.Revision.Id
                ? Replaced(entry, head, language, address.Link($"/briefs/{head.BriefId}", context.Request))
                : entry;
        }
    }

    /// <summary>An entry that no longer holds says so before everything else, and is new to those who have read it.</summary>
    private static FeedEntry Replaced(FeedEntry entry, DayHead head, Language language, string successor)
    {
        var said = language.Say($"Replaced by revision {head.Number}, signed by {head.SignedBy}: {successor}");
        return entry with
        {
            Title = language.Say($"Replaced: {entry.Title}"),
            ChangedAt = head.SignedAt,
            Summary = $"{said}\n{entry.Summary}",
            Successor = successor,
        };
    }
}
