using DayBrief.Service.Features.People;
using DayBrief.Service.Infrastructure;
using DayBrief.Service.Languages;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.Sites;

/// <summary>Takes a file of sites: shows first what is new, changed and refused, then keeps the whole file or nothing.</summary>
internal static class ImportSites
{
    private const int MaxBytes = 2_000_000;

    internal static void Map(RouteGroupBuilder forms) => forms.MapPost("/import", HandleAsync);

    private static async Task<Results<RazorComponentResult<SiteList>, RedirectHttpResult>> HandleAsync(
        HttpContext context, SiteStore sites, AuditLog audit, CancellationToken stopping)
    {
        try
        {
            var form = await context.Request.ReadFormAsync(stopping);
            var plan = ImportPlan.Of(await ContentAsync(form, stopping), sites);
            if (form["seen"] != plan.Fingerprint || !plan.IsUsable || !sites.SaveAll(plan.Kept))
                return ListSites.Page(context.Request, sites, plan);
            audit.Write(Who.Of(context), Language.Text("Imported sites"), string.Join(", ", plan.Kept.Select(kept => kept.Site.Id)));
            return TypedResults.Redirect("/sites?imported");
        }
        catch (InvalidInputException refused)
        {
            return ListSites.Page(context.Request, sites, errors: refused.Errors);
        }
    }

    private static async Task<string> ContentAsync(IFormCollection form, CancellationToken stopping)
    {
        if (form.Files["file"] is not { Length: > 0 } file)
            return form["content"].ToString() is { Length: > 0 } content ? content : throw InvalidInputException.Field("file", "Choose the file first.");
        if (file.Length > MaxBytes)
            throw InvalidInputException.Field("file", "The file is larger than 2 MB.");
        using var reader = new StreamReader(file.OpenReadStream());
        return await reader.ReadToEndAsync(stopping);
    }
}
