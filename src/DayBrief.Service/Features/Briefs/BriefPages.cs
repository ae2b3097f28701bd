using System.Text;
using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Features.Technique;
using DayBrief.Service.Languages;
using Hangfire;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.Briefs;

/// <summary>The page that a brief is read on, for the reader of a request.</summary>
internal sealed class BriefPages(BriefDesk desk, TechniqueDesk technique, IBackgroundJobClient jobs, PublishedFiles files, SiteStore sites, FirstSteps steps)
{
    private const string Begin = "<main id=\"main\">";
    private const string End = "</main>";

    public IResult Of(MadeBrief made, HttpContext context)
    {
        var pilot = Pilot.Of(context.Request);
        if (context.Request.Query.ContainsKey("glider"))
            context.Response.Cookies.Append(Pilot.Cookie, pilot.Query, Remembered(desk.Now));
        var reader = Reader.Of(
            made.Brief.Site, UnitsChoice.Of(context.Request), Language.Of(context.Request, made.Inputs.Site.Language));
        if (made.Standing is { IsAsSigned: false, Revision: { } revision } && files.Read(revision, ".html") is { } page)
            return Frozen(made, reader, Encoding.UTF8.GetString(page));
        return new RazorComponentResult<PhonePage>(new Dictionary<string, object?>
        {
            [nameof(PhonePage.Made)] = made,
            [nameof(PhonePage.For)] = reader,
            [nameof(PhonePage.Now)] = desk.Now,
            [nameof(PhonePage.Group)] = Pilot.IsKnown(context.Request) ? pilot.Experience : null,
            [nameof(PhonePage.Offered)] = sites.Find(made.Brief.Site.Id)?.Sending,
            [nameof(PhonePage.Begin)] = made.Inputs.Demonstration && context.Request.Path == "/" ? steps.Next(reader.Language) : null,
            [nameof(PhonePage.Technique)] = TechniqueView.For(made.Brief, pilot, reader.Figures, technique, jobs),
        });
    }

    private RazorComponentResult<FrozenPage> Frozen(MadeBrief made, Reader reader, string page)
    {
        var from = page.IndexOf(Begin, StringComparison.Ordinal) + Begin.Length;
        return new(new Dictionary<string, object?>
        {
            [nameof(FrozenPage.Made)] = made,
            [nameof(FrozenPage.For)] = reader,
            [nameof(FrozenPage.Now)] = desk.Now,
            [nameof(FrozenPage.Content)] = page[from..page.IndexOf(End, from, StringComparison.Ordinal)],
        });
    }

    private static CookieOptions Remembered(DateTimeOffset now) =>
        new() { Expires = now.AddYears(1), HttpOnly = true, SameSite = SameSiteMode.Lax, IsEssential = true };
}
