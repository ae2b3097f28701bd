using DayBrief.Service.Languages;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Identity;

namespace DayBrief.Service.Features.People;

/// <summary>The sign-in page, and what happens when it is sent. Unknown name and wrong password get one answer in one time.</summary>
internal sealed class SignIn(PersonStore people, Passwords passwords, SignInPauses pauses, AuditLog audit)
{
    internal static void Map(WebApplication app)
    {
        app.MapGet("/sign-in", Show).ExcludeFromDescription();
        app.MapPost("/sign-in", SubmitAsync).ExcludeFromDescription().RequireForm(always: true).RequireRateLimiting(Attempts.PerAddress);
    }

    /// <summary>The person, when name and password are right and no pause stands.</summary>
    public Person? Check(string name, string password)
    {
        if (pauses.Begin(name) is not null)
            return null;
        var person = people.FindByName(name);
        var result = passwords.Check(person is { CanSignIn: true } ? person.PasswordHash : null, password);
        if (result == PasswordVerificationResult.Failed)
        {
            if (pauses.Left(name) is not null)
                audit.Write(null, Language.Text("Sign-in paused after failures"), person?.Name ?? "a name nobody has");
            return null;
        }

        pauses.Clear(name);
        if (result == PasswordVerificationResult.SuccessRehashNeeded)
            people.Change(person!.Id, now => now.PasswordHash == person.PasswordHash ? now with { PasswordHash = passwords.Hash(password) } : null);
        return person;
    }

    /// <summary>Where to go after signing in: only within this service.</summary>
    public static string Local(string? returnUrl) => returnUrl is { Length: > 0 } && RedirectHttpResult.IsLocalUrl(returnUrl) ? returnUrl : "/";

    private static RazorComponentResult<SignInPage> Show(string? returnUrl, PersonStore people) =>
        new(new Dictionary<string, object?>
        {
            [nameof(SignInPage.ReturnUrl)] = Local(returnUrl),
            [nameof(SignInPage.NobodyYet)] = !people.Any(),
        });

    private static async Task<Results<RedirectHttpResult, RazorComponentResult<SignInPage>>> SubmitAsync(
        HttpContext context, SignIn signIn, SignInPauses pauses, AuditLog audit, CancellationToken stopping)
    {
        var form = await context.Request.ReadFormAsync(stopping);
        var (name, back) = (form["name"].ToString(), Local(form["returnUrl"]));
        if (signIn.Check(name, form["password"].ToString()) is not { } person)
            return Refuse(context.Response, name, back, pauses.Left(name));
        await Sessions.StartAsync(context, person, form["remember"] == "on");
        audit.Write(new(person.Id, person.Name, person.Role, ByKey: false), Language.Text("Signed in"), person.Name);
        return TypedResults.Redirect(back);
    }

    private static RazorComponentResult<SignInPage> Refuse(HttpResponse response, string name, string back, TimeSpan? pause)
    {
        if (pause is { } left)
            response.Headers.RetryAfter = Math.Ceiling(left.TotalSeconds).ToString(System.Globalization.CultureInfo.InvariantCulture);
        return new(new Dictionary<string, object?>
        {
            [nameof(SignInPage.Name)] = name,
            [nameof(SignInPage.ReturnUrl)] = back,
            [nameof(SignInPage.Wrong)] = true,
            [nameof(SignInPage.Pause)] = pause,
        })
        {
            StatusCode = pause is null ? StatusCodes.Status422UnprocessableEntity : StatusCodes.Status429TooManyRequests,
        };
    }
}
