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
        if (sites.FindKept(id) is not { } kept)
            return NotFoundPage.Result("page [not found]");
        var form = await context.Request.ReadFormAsync(stopping);
        var typed = SendingFields.Of(form);
        var sending = typed.ToSending(kept.Site.Sending);
        try
        {
            var errors = new FieldErrors();
            sending.Check(errors);
            errors.ThrowIfAny();
        }
        catch (InvalidInputException refused)
        {
            return ShowSending.Page(kept, context, typed, refused.Errors, StatusCodes.Status400BadRequest);
        }

        if (sites.Save(kept.Site with { Sending = sending.IsEmpty ? null : sending }, SeenVersion.Of(form[SeenVersion.Field])) is null)
            return ShowSending.Page(kept, context, typed, [SeenVersion.Conflict], StatusCodes.Status409Conflict);
        audit.Write(
            Who.Of(context),
            Languages.Language.Text("Changed to whom a site sends"),
            id,
            $"mail {sending.MailTo!.Count}, webhooks {sending.Webhooks!.Count}, feed {sending.Feed}, calendar {sending.Calendar}");
        return TypedResults.Redirect($"{context.Request.Path}?kept");
    }
}
