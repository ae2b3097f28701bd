using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authentication.Cookies;
using Microsoft.AspNetCore.Authorization;

namespace DayBrief.Service.Features.People;

/// <summary>People, their roles and sessions; keys for programs; who may do what; the audit log.</summary>
internal static class PeopleFeature
{
    private const string CookieOrKey = "daybrief";

    public static void AddPeople(this IServiceCollection services, IConfiguration configuration)
    {
        services.AddSingleton(new AdminKey(configuration[AdminKey.Variable]));
        services.AddSingleton<PersonStore>();
        services.AddSingleton<ApiKeyStore>();
        services.AddSingleton<AuditLog>();
        services.AddSingleton<Trial>();
        services.AddSingleton<IAuthorizationHandler, AccessHandler>();
        services.AddSingleton<IAuthorizationMiddlewareResultHandler, AccessRefusals>();
        services.AddAuthorization(Access.AddPolicies);
        services.AddAuthentication(CookieOrKey)
            .AddPolicyScheme(CookieOrKey, null, either => either.ForwardDefaultSelector = context =>
                context.Request.Headers.ContainsKey(ApiKeyHandler.Header) ? ApiKeyHandler.SchemeName : CookieAuthenticationDefaults.AuthenticationScheme)
            .AddScheme<AuthenticationSchemeOptions, ApiKeyHandler>(ApiKeyHandler.SchemeName, null)
            .AddCookie();
    }

    public static void UsePeople(this WebApplication app)
    {
        app.UseAuthentication();
        app.UseAuthorization();
    }
}
