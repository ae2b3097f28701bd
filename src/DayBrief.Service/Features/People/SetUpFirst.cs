using DayBrief.Service.Infrastructure;
using DayBrief.Service.Languages;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.People;

/// <summary>Makes the first administrator by the printed link, and signs in.</summary>
internal static class SetUpFirst
{
    internal static void Map(WebApplication app)
    {
        app.MapGet("/set-up", Show).ExcludeFromDescription();
        app.MapPost("/set-up", SubmitAsync).ExcludeFromDescription().RequireForm(always: true).RequireRateLimiting(Attempts.PerAddress);
    }

    private static Results<RazorComponentResult<SetUpPage>, RazorComponentResult<NoticePage>> Show(string? token, SetUpLink link) =>
        link.Opens(token) ? Page(new NewPerson("", null), token!, []) : AcceptLink.Gone();

    private static async Task<Results<RedirectHttpResult, RazorComponentResult<SetUpPage>, RazorComponentResult<NoticePage>>> SubmitAsync(
        HttpContext context, SetUpLink link, PersonStore people, Passwords passwords, AuditLog audit, TimeProvider clock, CancellationToken stopping)
    {
        var form = await context.Request.ReadFormAsync(stopping);
        var token = form["token"].ToString();
        if (!link.Opens(token))
            return AcceptLink.Gone();
        var entered = NewPerson.Of(form);
        try
        {
            var errors = new FieldErrors();
            entered.Check(errors);
            var password = NewPassword.Of(form, entered.Name, entered.Email, errors);
            errors.ThrowIfAny();
            var person = entered.Checked(Role.Administrator, clock.GetUtcNow()) with { PasswordHash = passwords.Hash(password) };
            if (!people.AddFirst(person))
                return AcceptLink.Gone();
            link.Close();
            audit.Write(new(person.Id, person.Name, person.Role, ByKey: false), Language.Text("Set up the first administrator"), person.Name);
            await Sessions.StartAsync(context, person, remember: false);
            return TypedResults.Redirect("/begin");
        }
        catch (InvalidInputException refused)
        {
            return Page(entered, token, refused.Errors);
        }
    }

    private static RazorComponentResult<SetUpPage> Page(NewPerson entered, string token, IReadOnlyList<ProblemError> errors) =>
        new(new Dictionary<string, object?>
        {
            [nameof(SetUpPage.Name)] = entered.Name,
            [nameof(SetUpPage.Email)] = entered.Email,
            [nameof(SetUpPage.Token)] = token,
            [nameof(SetUpPage.Refused)] = errors,
        })
        {
            StatusCode = errors.Count > 0 ? StatusCodes.Status422UnprocessableEntity : StatusCodes.Status200OK,
        };
}
