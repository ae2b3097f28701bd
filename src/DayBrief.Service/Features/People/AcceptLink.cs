using DayBrief.Service.Infrastructure;
using DayBrief.Service.Languages;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.People;

/// <summary>Somebody with a link, invited or without a password any more, chooses one and is signed in.</summary>
internal static class AcceptLink
{
    internal static void Map(WebApplication app)
    {
        app.MapGet("/invitation", Show).ExcludeFromDescription();
        app.MapPost("/invitation", SubmitAsync).ExcludeFromDescription().RequireForm(always: true).RequireRateLimiting(Attempts.PerAddress);
    }

    private static Results<RazorComponentResult<InvitationPage>, RazorComponentResult<NoticePage>> Show(
        string? token, PersonStore people, TimeProvider clock) =>
        people.FindByLink(token ?? "", clock.GetUtcNow()) is { } person ? Page(person, token!, []) : Gone();

    private static async Task<Results<RedirectHttpResult, RazorComponentResult<InvitationPage>, RazorComponentResult<NoticePage>>> SubmitAsync(
        HttpContext context, PersonStore people, Passwords passwords, SignInPauses pauses, AuditLog audit, TimeProvider clock, CancellationToken stopping)
    {
        var form = await context.Request.ReadFormAsync(stopping);
        var token = form["token"].ToString();
        if (people.FindByLink(token, clock.GetUtcNow()) is not { } invited)
            return Gone();
        try
        {
            var hash = passwords.Hash(NewPassword.Of(form, invited.Name, invited.Email));
            // Compared once more within the write: of two who open the link at once, one gets in.
            var person = people.Change(invited.Id, now => now.LinkHash == invited.LinkHash && !now.Disabled
                ? now.WithNewStamp() with { PasswordHash = hash, LinkHash = null, LinkUntil = null }
                : null);
            if (person is null)
                return Gone();
            pauses.Clear(person.Name);
            audit.Write(new(person.Id, person.Name, person.Role, ByKey: false), Language.Text("Chose a password by link"), person.Name);
            await Sessions.StartAsync(context, person, remember: false);
            return TypedResults.Redirect("/");
        }
        catch (InvalidInputException refused)
        {
            return Page(invited, token, refused.Errors);
        }
    }

    private static RazorComponentResult<InvitationPage> Page(Person person, string token, IReadOnlyList<ProblemError> errors) =>
        new(new Dictionary<string, object?>
        {
            [nameof(InvitationPage.Name)] = person.Name,
            [nameof(InvitationPage.Token)] = token,
            [nameof(InvitationPage.Refused)] = errors,
        })
        {
            StatusCode = errors.Count > 0 ? StatusCodes.Status422UnprocessableEntity : StatusCodes.Status200OK,
        };

    internal static RazorComponentResult<NoticePage> Gone() => NoticePage.Result(
        StatusCodes.Status404NotFound,
        Language.Text("This link does not work"),
        Language.Text("It works once and for a limited time. The link to set up the service is printed anew at each start until somebody has used it; other links are made by an administrator."));
}
