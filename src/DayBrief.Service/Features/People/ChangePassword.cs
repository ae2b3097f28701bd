using DayBrief.Service.Infrastructure;
using DayBrief.Service.Languages;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.People;

/// <summary>A person's own page: who is signed in, and another password. Other sessions of the person end with it.</summary>
internal static class ChangePassword
{
    internal static void Map(WebApplication app)
    {
        var account = app.MapGroup("/account").RequireAuthorization(Access.Reader).RequireForm().ExcludeFromDescription();
        account.MapGet("", Show);
        account.MapPost("", SubmitAsync).RequireRateLimiting(Attempts.PerAddress);
    }

    private static RazorComponentResult<AccountPage> Show(string? changed) => Page([], changed is not null);

    private static async Task<Results<RedirectHttpResult, RazorComponentResult<AccountPage>>> SubmitAsync(
        HttpContext context, SignIn signIn, PersonStore people, Passwords passwords, AuditLog audit, CancellationToken stopping)
    {
        var form = await context.Request.ReadFormAsync(stopping);
        try
        {
            var person = people.Find(Who.Of(context)!.Id) ?? throw Wrong();
            var hash = passwords.Hash(NewPassword.Of(form, person.Name, person.Email));
            if (signIn.Check(person.Name, form["current"].ToString()) is null)
                throw Wrong();
            var changed = people.Change(person.Id, now => now.WithNewStamp() with { PasswordHash = hash, LinkHash = null, LinkUntil = null });
            audit.Write(Who.Of(context), Language.Text("Changed the own password"), person.Name);
            await Sessions.RenewAsync(context, changed!);
            return TypedResults.Redirect("/account?changed");
        }
        catch (InvalidInputException refused)
        {
            return Page(refused.Errors, changed: false);
        }
    }

    private static InvalidInputException Wrong() =>
        InvalidInputException.Field("current", Language.Text("This is not your password, or there were too many attempts: then wait a while."));

    private static RazorComponentResult<AccountPage> Page(IReadOnlyList<ProblemError> errors, bool changed) =>
        new(new Dictionary<string, object?> { [nameof(AccountPage.Refused)] = errors, [nameof(AccountPage.Changed)] = changed })
        {
            StatusCode = errors.Count > 0 ? StatusCodes.Status422UnprocessableEntity : StatusCodes.Status200OK,
        };
}
