using DayBrief.Service.Languages;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.People;

/// <summary>The page on which a reader gives the code of a site, once on each device.</summary>
internal static class GiveReaderCode
{
    internal static void Map(WebApplication app)
    {
        app.MapGet("/fields/{site}/code", Show).ExcludeFromDescription();
        app.MapPost("/fields/{site}/code", SubmitAsync).ExcludeFromDescription().RequireForm(always: true).RequireRateLimiting(Attempts.PerAddress);
    }

    private static Results<RazorComponentResult<ReaderCodePage>, RedirectHttpResult> Show(
        string site, string? returnUrl, HttpContext context, ReaderCodes codes, KnownSites sites) =>
        codes.Asks(site) && !codes.IsRemembered(context, site) ? Page(site, SignIn.Local(returnUrl), sites, wrong: false) : TypedResults.Redirect(SignIn.Local(returnUrl));

    private static async Task<Results<RazorComponentResult<ReaderCodePage>, RedirectHttpResult>> SubmitAsync(
        string site, HttpContext context, ReaderCodes codes, KnownSites sites, CancellationToken stopping)
    {
        var form = await context.Request.ReadFormAsync(stopping);
        var back = SignIn.Local(form["returnUrl"]);
        if (codes.Asks(site) && !codes.IsRight(site, form["code"].ToString()))
            return Page(site, back, sites, wrong: true);
        codes.Remember(context, site);
        return TypedResults.Redirect(back);
    }

    private static RazorComponentResult<ReaderCodePage> Page(string site, string back, KnownSites sites, bool wrong) =>
        new(new Dictionary<string, object?>
        {
            [nameof(ReaderCodePage.Site)] = site,
            [nameof(ReaderCodePage.Name)] = sites().FirstOrDefault(known => known.Id == site).Name ?? site,
            [nameof(ReaderCodePage.ReturnUrl)] = back,
            [nameof(ReaderCodePage.Error)] = wrong ? Language.Text("This is not the code.") : null,
        })
        {
            StatusCode = wrong ? StatusCodes.Status422UnprocessableEntity : StatusCodes.Status200OK,
        };
}
