using System.Security.Claims;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.People;

/// <summary>Who asks: a person who has signed in, or a program with an API key.</summary>
/// <param name="Id">Of the person, or of the key.</param>
/// <param name="Name">As others read it.</param>
/// <param name="Role">Of the person, or what the scope of the key amounts to.</param>
/// <param name="ByKey">A program, not a person.</param>
internal sealed record Who(string Id, string Name, Role Role, bool ByKey)
{
    private const string Scope = "scope";

    /// <summary>Null for an anonymous reader, and in a trial.</summary>
    public static Who? Of(HttpContext context) => Of(context.User);

    public static Who? Of(ClaimsPrincipal user) =>
        user.Identity?.IsAuthenticated == true
        && user.FindFirstValue(ClaimTypes.NameIdentifier) is { } id
        && Choice.Parse<Role>(user.FindFirstValue(ClaimTypes.Role)) is { } role
            ? new(id, user.Identity.Name ?? id, role, ScopeOf(user) is not null)
            : null;

    /// <summary>Null for a person.</summary>
    public static KeyScope? ScopeOf(ClaimsPrincipal user) => Choice.Parse<KeyScope>(user.FindFirstValue(Scope));

    public static ClaimsPrincipal Person(string id, string name, Role role, string scheme, params Claim[] others) =>
        new(new ClaimsIdentity([.. Claims(id, name, role), .. others], scheme));

    public static ClaimsPrincipal Key(string id, string name, KeyScope scope, string scheme) =>
        new(new ClaimsIdentity(
            [
                .. Claims(id, name, scope == KeyScope.Administer ? Role.Administrator : Role.Instructor),
                new(Scope, Choice.NameOf(scope)),
            ],
            scheme));

    private static Claim[] Claims(string id, string name, Role role) =>
        [new(ClaimTypes.NameIdentifier, id), new(ClaimTypes.Name, name), new(ClaimTypes.Role, Choice.NameOf(role))];
}
