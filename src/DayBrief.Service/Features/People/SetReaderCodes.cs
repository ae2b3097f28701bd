using DayBrief.Service.Infrastructure;
using DayBrief.Service.Languages;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.People;

/// <summary>The page on which administrators let a site ask its readers for a code.</summary>
internal static class SetReaderCodes
{
    private const int Shortest = 6;
    private const int Longest = 64;

    internal static void Map(RouteGroupBuilder administration)
    {
        administration.MapGet("/codes", Show);
        administration.MapPost("/codes", SetAsync);
        administration.MapPost("/codes/{site}/remove", Remove);
    }

    private static RazorComponentResult<CodesPage> Show(KnownSites sites, ReaderCodes codes) => Page(sites, codes, null, null);

    private static async Task<Results<RedirectHttpResult, RazorComponentResult<CodesPage>>> SetAsync(
        HttpContext context, KnownSites sites, ReaderCodes codes, AuditLog audit, CancellationToken stopping)
    {
        var form = await context.Request.ReadFormAsync(stopping);
        var (site, code) = (form["site"].ToString(), form["code"].ToString().Trim());
        var errors = new FieldErrors();
        if (!sites().Any(known => known.Id == site))
            errors.Add("site", Language.Text("Choose one of the sites."));
        if (code.Length is < Shortest or > Longest)
            errors.Add("code", Language.Text("The code needs 6 to 64 characters."));
        if (errors.All.Count > 0)
            return Page(sites, codes, site, errors.All);
        codes.Set(site, code);
        audit.Write(Who.Of(context), Language.Text("Set the code for readers"), site);
        return TypedResults.Redirect("/people/codes");
    }

    private static RedirectHttpResult Remove(string site, HttpContext context, ReaderCodes codes, AuditLog audit)
    {
        if (codes.Asks(site))
        {
            codes.Remove(site);
            audit.Write(Who.Of(context), Language.Text("Removed the code for readers"), site);
        }

        return TypedResults.Redirect("/people/codes");
    }

    private static RazorComponentResult<CodesPage> Page(KnownSites sites, ReaderCodes codes, string? chosen, IReadOnlyList<ProblemError>? errors) =>
        new(new Dictionary<string, object?>
        {
            [nameof(CodesPage.Sites)] = sites(),
            [nameof(CodesPage.Asking)] = codes.Sites(),
            [nameof(CodesPage.Chosen)] = chosen,
            [nameof(CodesPage.Refused)] = errors,
        })
        {
            StatusCode = errors is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity,
        };
}
