using DayBrief.Service.Features.Automation.Status;
using DayBrief.Service.Features.People;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Infrastructure;
using DayBrief.Service.Languages;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.Automation.Settings;

/// <summary>What is done by itself at one site: the form, and keeping it. For administrators: it makes this host ask others.</summary>
internal static class SetAutomation
{
    internal static void Map(WebApplication app)
    {
        app.MapGet("/sites/{id}/automation", Show).RequireAuthorization(Access.Administrator).ExcludeFromDescription();
        app.MapPost("/sites/{id}/automation", KeepAsync).RequireAuthorization(Access.Administrator).RequireForm().ExcludeFromDescription();
    }

    internal static string PathOf(string siteId) => $"/sites/{Uri.EscapeDataString(siteId)}/automation";

    private static Results<RazorComponentResult<AutomationPage>, RazorComponentResult<NotFoundPage>> Show(
        string id, HttpRequest request, SiteStore sites) =>
        sites.Find(id) is { } site
            ? Page(site, SiteAutomationForm.Values(site.Automation), request, [])
            : NotFoundPage.Result(Language.Text("site [not found]"));

    private static async Task<Results<RazorComponentResult<AutomationPage>, RazorComponentResult<NotFoundPage>, RedirectHttpResult>> KeepAsync(
        string id, HttpContext context, SiteStore sites, AuditLog audit, CancellationToken stopping)
    {
        if (sites.Find(id) is not { } site)
            return NotFoundPage.Result(Language.Text("site [not found]"));
        var form = await context.Request.ReadFormAsync(stopping);
        var errors = new FieldErrors();
        try
        {
            var automation = SiteAutomationForm.Read(field => form[field].ToString(), errors);
            errors.ThrowIfAny();
            Keep(sites, site, automation);
        }
        catch (InvalidInputException refused)
        {
            return Page(site, form.ToDictionary(field => field.Key, field => field.Value.ToString()), context.Request, refused.Errors);
        }

        audit.Write(Who.Of(context), Language.Text("Changed what runs by itself"), id);
        return TypedResults.Redirect(ShowStatus.Path);
    }

    /// <summary>Only this part of the site: what somebody else changes in the rest meanwhile stays.</summary>
    private static void Keep(SiteStore sites, SiteJson site, SiteAutomationJson? automation)
    {
        while (sites.FindKept(site.Id!) is { } kept && sites.Save(kept.Site with { Automation = automation }, kept.Version) is null)
        {
        }
    }

    private static RazorComponentResult<AutomationPage> Page(
        SiteJson site, IReadOnlyDictionary<string, string> input, HttpRequest request, IReadOnlyList<ProblemError> refused) =>
        new(new Dictionary<string, object?>
        {
            [nameof(AutomationPage.Site)] = site,
            [nameof(AutomationPage.Input)] = input,
            [nameof(AutomationPage.In)] = Language.Of(request),
            [nameof(AutomationPage.Refused)] = refused,
        })
        { StatusCode = refused.Count > 0 ? StatusCodes.Status422UnprocessableEntity : StatusCodes.Status200OK };
}
