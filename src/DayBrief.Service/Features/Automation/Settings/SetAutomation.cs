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
        sites.FindKept(id) is { } kept
            ? Page(kept, SiteAutomationForm.Values(kept.Site.Automation), request)
            : NotFoundPage.Result(Language.Text("site [not found]"));

    private static async Task<Results<RazorComponentResult<AutomationPage>, RazorComponentResult<NotFoundPage>, RedirectHttpResult>> KeepAsync(
        string id, HttpContext context, SiteStore sites, AuditLog audit, CancellationToken stopping)
    {
        if (sites.FindKept(id) is not { } kept)
            return NotFoundPage.Result(Language.Text("site [not found]"));
        var form = await context.Request.ReadFormAsync(stopping);
        var typed = form.ToDictionary(field => field.Key, field => field.Value.ToString());
        try
        {
            var errors = new FieldErrors();
            var automation = SiteAutomationForm.Read(field => form[field].ToString(), errors);
            errors.ThrowIfAny();
            if (sites.Save(kept.Site with { Automation = automation }, SeenVersion.Of(form[SeenVersion.Field])) is null)
                return Page(kept, typed, context.Request, [SeenVersion.Conflict], StatusCodes.Status409Conflict);
        }
        catch (InvalidInputException refused)
        {
            return Page(kept, typed, context.Request, refused.Errors, StatusCodes.Status422UnprocessableEntity);
        }

        audit.Write(Who.Of(context), Language.Text("Changed what runs by itself"), id);
        return TypedResults.Redirect(ShowStatus.Path);
    }

    private static RazorComponentResult<AutomationPage> Page(
        KeptSite kept,
        IReadOnlyDictionary<string, string> input,
        HttpRequest request,
        IReadOnlyList<ProblemError>? refused = null,
        int status = StatusCodes.Status200OK) =>
        new(new Dictionary<string, object?>
        {
            [nameof(AutomationPage.Of)] = kept,
            [nameof(AutomationPage.Input)] = input,
            [nameof(AutomationPage.In)] = Language.Of(request),
            [nameof(AutomationPage.Refused)] = refused,
        })
        { StatusCode = status };
}
