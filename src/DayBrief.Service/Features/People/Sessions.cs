using System.Security.Claims;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authentication.Cookies;

namespace DayBrief.Service.Features.People;

/// <summary>Sessions of people: a protected cookie, checked against the person at every request.</summary>
internal static class Sessions
{
    public const string Cookie = "daybrief-session";

    private const string Scheme = CookieAuthenticationDefaults.AuthenticationScheme;
    private const string Stamp = "stamp";

    private static readonly TimeSpan ForTheDay = TimeSpan.FromHours(12);
    private static readonly TimeSpan Remembered = TimeSpan.FromDays(14);

    public static void Configure(CookieAuthenticationOptions cookie)
    {
        cookie.Cookie.Name = Cookie;
        cookie.Cookie.HttpOnly = true;
        cookie.Cookie.SameSite = SameSiteMode.Lax;
        cookie.Cookie.SecurePolicy = CookieSecurePolicy.SameAsRequest;
        cookie.ExpireTimeSpan = Remembered;
        cookie.SlidingExpiration = true;
        cookie.Events.OnValidatePrincipal = ValidateAsync;
    }

    /// <summary>Signs a person in: for the day, or with <paramref name="remember"/> also when the browser is closed.</summary>
    public static Task StartAsync(HttpContext context, Person person, bool remember)
    {
        var now = context.RequestServices.GetRequiredService<TimeProvider>().GetUtcNow();
        return context.SignInAsync(
            Scheme,
            Who.Person(person.Id, person.Name, person.Role, Scheme, new Claim(Stamp, person.Stamp)),
            new() { IsPersistent = remember, IssuedUtc = now, ExpiresUtc = now + (remember ? Remembered : ForTheDay) });
    }

    /// <summary>Gives a session that goes on after its person's password has changed the new stamp.</summary>
    public static async Task RenewAsync(HttpContext context, Person person)
    {
        var current = await context.AuthenticateAsync(Scheme);
        await StartAsync(context, person, current.Properties?.IsPersistent ?? false);
    }

    public static Task EndAsync(HttpContext context) => context.SignOutAsync(Scheme);

    private static async Task ValidateAsync(CookieValidatePrincipalContext session)
    {
        var people = session.HttpContext.RequestServices.GetRequiredService<PersonStore>();
        var id = session.Principal?.FindFirstValue(ClaimTypes.NameIdentifier);
        if (id is not null
            && people.Find(id) is { CanSignIn: true } person
            && person.Stamp == session.Principal!.FindFirstValue(Stamp))
            return;
        session.RejectPrincipal();
        await session.HttpContext.SignOutAsync(Scheme);
    }
}
