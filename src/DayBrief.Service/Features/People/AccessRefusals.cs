using DayBrief.Service.Infrastructure;
using DayBrief.Service.Languages;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Authorization.Policy;

namespace DayBrief.Service.Features.People;

/// <summary>What is answered to those who may not: programs get problem details, browsers a page.</summary>
internal sealed class AccessRefusals(Trial trial) : IAuthorizationMiddlewareResultHandler
{
    private static readonly string NotForRole = Language.Text("Not for your role");

    public Task HandleAsync(RequestDelegate next, HttpContext context, AuthorizationPolicy policy, PolicyAuthorizationResult authorizeResult)
    {
        if (authorizeResult.Succeeded)
            return next(context);
        if (IsProgram(context.Request))
            return authorizeResult.Forbidden ? ForbidAsync(context) : ChallengeAsync(context);
        if (authorizeResult.Forbidden)
            return NoticePage.Result(StatusCodes.Status403Forbidden, NotForRole, Language.Text("Your role does not cover this. An administrator can change it.")).ExecuteAsync(context);
        context.Response.Redirect($"/sign-in?returnUrl={Uri.EscapeDataString(BackTo(context.Request))}");
        return Task.CompletedTask;
    }

    private static bool IsProgram(HttpRequest request) =>
        request.Path.StartsWithSegments("/api") || request.Headers.ContainsKey(ApiKeyHandler.Header);

    private async Task ChallengeAsync(HttpContext context)
    {
        // RFC 9110, 11.6.1: an answer 401 says how to authenticate.
        context.Response.Headers.WWWAuthenticate = $"ApiKey header=\"{ApiKeyHandler.Header}\"";
        var failure = (await context.AuthenticateAsync(ApiKeyHandler.SchemeName)).Failure?.Message;
        await WriteAsync(context, StatusCodes.Status401Unauthorized, "Sign-in or a key is needed.", failure ?? Missing());
    }

    private string Missing() => trial.IsOn
        ? $"Until the first administrator is set up, this is accepted only from the machine itself and its own pages. Set one up, or start with {AdminKey.Variable} and send it as {ApiKeyHandler.Header}."
        : $"Send an API key as {ApiKeyHandler.Header}; an administrator makes one at /people/keys.";

    private static Task ForbidAsync(HttpContext context) => WriteAsync(
        context,
        StatusCodes.Status403Forbidden,
        "Not allowed.",
        Who.ScopeOf(context.User) is { } scope
            ? $"The scope of this key is \"{Choice.NameOf(scope)}\", which does not cover this."
            : "This is not for your role, or the request was sent by a page of another site.");

    private static Task WriteAsync(HttpContext context, int status, string title, string detail)
    {
        context.Response.StatusCode = status;
        var problem = Problem.Refused(status, title, detail, ApiKeyHandler.Header, context.Request.Path);
        return context.Response.WriteAsJsonAsync(problem, Json.Line, "application/problem+json", context.RequestAborted);
    }

    /// <summary>The page to come back to: after a refused form, the one it stands on.</summary>
    private static string BackTo(HttpRequest request) =>
        HttpMethods.IsGet(request.Method)
            ? $"{request.Path}{request.QueryString}"
            : request.GetTypedHeaders().Referer is { } from && from.Authority == request.Host.Value ? from.PathAndQuery : "/";
}
