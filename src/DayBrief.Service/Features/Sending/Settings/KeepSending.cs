using DayBrief.Service.Features.People;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Infrastructure;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.Sending.Settings;

/// <summary>Keeps to whom a site sends.</summary>
internal static class KeepSending
{
    internal static void Map(WebApplication app) =>
        app.MapPost(ShowSending.Path, HandleAsync).RequireAuthorization(Access.Administrator).RequireForm().ExcludeFromDescription();

    private static async Task<Results<RedirectHttpResult, RazorComponentResult<SendingPage>, RazorComponentResult<NotFoundPage>>> HandleAsync(
        string id, HttpContext context, SiteStore sites, AuditLog audit, CancellationToken stopping)
    {
        if (sites.Find(id) is not { } site)
            return NotFoundPage.Result("page");
        var typed = SendingFields.Of(await context.Request.ReadFormAsync(stopping));
        var sending = typed.ToSending(site.Sending);
        try
        {
            var errors = new FieldErrors();
            sending.Check(errors);
            errors.ThrowIfAny();
        }
        catch (InvalidInputException refused)
        {
            return ShowSending.Page(site, context, typed, refused.Errors);
        }

        sites.Save(site with { Sending = sending.IsEmpty ? null : sending });
        audit.Write(
            Who.Of(context),
            Languages.Language.Text("Changed to whom a site sends"),
            id,
            $"mail {sending.MailTo!.Count}, webhooks {sending.Webhooks!.Count}, feed {sending.Feed}, calendar {sending.Calendar}");
        return TypedResults.Redirect($"{context.Request.Path}?kept");
    }
}
