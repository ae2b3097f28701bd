using System.Globalization;
using DayBrief.Service.Infrastructure;
using DayBrief.Service.Languages;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.People;

/// <summary>The page of the API keys: made and shown once, revoked.</summary>
internal static class ListKeys
{
    private const int LongestName = 80;
    private const int LongestDays = 3650;

    internal static void Map(RouteGroupBuilder administration)
    {
        administration.MapGet("/keys", Show);
        administration.MapPost("/keys", MakeAsync);
        administration.MapPost("/keys/{id}/revoke", Revoke);
    }

    private static RazorComponentResult<KeysPage> Show(ApiKeyStore keys, TimeProvider clock) => Page(keys, clock);

    private static async Task<RazorComponentResult<KeysPage>> MakeAsync(
        HttpContext context, ApiKeyStore keys, AuditLog audit, TimeProvider clock, CancellationToken stopping)
    {
        var form = await context.Request.ReadFormAsync(stopping);
        var name = form["name"].ToString().Trim();
        try
        {
            var errors = new FieldErrors();
            if (name.Length is 0 or > LongestName || name.Any(char.IsControl))
                errors.Add("name", Language.Text("Say what it is for, in at most 80 characters."));
            var scope = errors.OneOf("scope", form["scope"], KeyScope.Prepare);
            errors.ThrowIfAny();
            var now = clock.GetUtcNow();
            var (key, secret) = keys.Make(name, scope, now, now + LastsFor(form["days"]));
            audit.Write(Who.Of(context), Language.Text("Made a key"), key.Name, $"{Choice.NameOf(scope)}, {key.Start}…");
            context.Response.Headers.CacheControl = "no-store";
            return Page(keys, clock, name, secret);
        }
        catch (InvalidInputException refused)
        {
            return Page(keys, clock, name, null, refused.Errors);
        }
    }

    private static RedirectHttpResult Revoke(string id, HttpContext context, ApiKeyStore keys, AuditLog audit, TimeProvider clock)
    {
        if (keys.Revoke(id, clock.GetUtcNow()) is { } key)
            audit.Write(Who.Of(context), Language.Text("Revoked a key"), key.Name, $"{key.Start}…");
        return TypedResults.Redirect("/people/keys");
    }

    /// <summary>Null for a key without end.</summary>
    private static TimeSpan? LastsFor(string? days) =>
        int.TryParse(days, NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count is > 0 and <= LongestDays
            ? TimeSpan.FromDays(count)
            : null;

    private static RazorComponentResult<KeysPage> Page(
        ApiKeyStore keys, TimeProvider clock, string? name = null, string? secret = null, IReadOnlyList<ProblemError>? errors = null) =>
        new(new Dictionary<string, object?>
        {
            [nameof(KeysPage.Keys)] = keys.All(),
            [nameof(KeysPage.Now)] = clock.GetUtcNow(),
            [nameof(KeysPage.Name)] = name,
            [nameof(KeysPage.NewSecret)] = secret,
            [nameof(KeysPage.Refused)] = errors,
        })
        {
            StatusCode = errors is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity,
        };
}
