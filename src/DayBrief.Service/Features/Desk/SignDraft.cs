using System.Globalization;
using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Features.People;
using DayBrief.Service.Infrastructure;
using DayBrief.Texts;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.Desk;

/// <summary>Puts the instructor's name under the draft that he saw, and takes a brief back.</summary>
internal static class SignDraft
{
    internal static void Map(WebApplication app)
    {
        app.MapPost("/desk/{id}/sign", SignAsync).ExcludeFromDescription().RequireAuthorization(Access.Signer).RequireForm();
        app.MapPost("/desk/{id}/withdraw", WithdrawAsync).ExcludeFromDescription().RequireAuthorization(Access.Signer).RequireForm();
    }

    private static async Task<Results<RedirectHttpResult, RazorComponentResult<DeskPage>, RazorComponentResult<NotFoundPage>>> SignAsync(
        string id, HttpContext context, BriefStore briefs, Signing signing, Keeping keeping, DeskViews views, CancellationToken stopping)
    {
        if (briefs.Find(id) is not { } draft)
            return NotFoundPage.Result("brief [not found]");
        var form = await context.Request.ReadFormAsync(stopping);
        var (version, reason) = (int.TryParse(form["version"], CultureInfo.InvariantCulture, out var seen) ? seen : 0, form["reason"].ToString());
        try
        {
            var outcome = await signing.SignAsync(id, version, SignByApi.SignerOf(context), reason);
            if (outcome.Revision is not null)
                return TypedResults.Redirect($"/briefs/{id}");

            var who = (object?)outcome.Newer!.EditedBy ?? Words.Of("Somebody [first word]");
            return Refused(outcome.Newer, [new(Words.Of($"{who} has changed the draft since you saw it. Look at it again, then sign."))]);
        }
        catch (InvalidInputException refused)
        {
            return Refused(draft, refused.Errors);
        }

        RazorComponentResult<DeskPage> Refused(Draft shown, IReadOnlyList<ProblemError> errors) => OpenDesk.Page(
            views.Of(keeping.Open(shown), context) with { SignErrors = errors, Reason = reason }, StatusCodes.Status422UnprocessableEntity);
    }

    private static async Task<Results<RedirectHttpResult, RazorComponentResult<DeskPage>, RazorComponentResult<NotFoundPage>>> WithdrawAsync(
        string id, HttpContext context, BriefStore briefs, Signing signing, Keeping keeping, DeskViews views, CancellationToken stopping)
    {
        if (briefs.Find(id) is not { } draft)
            return NotFoundPage.Result("brief [not found]");
        var reason = (await context.Request.ReadFormAsync(stopping))["reason"].ToString();
        try
        {
            signing.Withdraw(id, SignByApi.SignerOf(context), reason);
            return TypedResults.Redirect($"/briefs/{id}");
        }
        catch (InvalidInputException refused)
        {
            return OpenDesk.Page(views.Of(keeping.Open(draft), context) with { SignErrors = refused.Errors }, StatusCodes.Status422UnprocessableEntity);
        }
    }
}
