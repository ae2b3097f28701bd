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
        services.AddSingleton<Passwords>();
        services.AddSingleton<SignInPauses>();
        services.AddSingleton<SignIn>();
        services.AddSingleton<ChangePerson>();
        services.AddSingleton<SetUpLink>();
        services.AddSingleton<ReaderCodes>();
        services.AddSingleton<IAuthorizationHandler, AccessHandler>();
        services.AddSingleton<IAuthorizationMiddlewareResultHandler, AccessRefusals>();
        services.AddAuthorization(Access.AddPolicies);
        services.AddAuthentication(CookieOrKey)
            .AddPolicyScheme(CookieOrKey, null, either => either.ForwardDefaultSelector = context =>
                context.Request.Headers.ContainsKey(ApiKeyHandler.Header) ? ApiKeyHandler.SchemeName : CookieAuthenticationDefaults.AuthenticationScheme)
            .AddScheme<AuthenticationSchemeOptions, ApiKeyHandler>(ApiKeyHandler.SchemeName, null)
            .AddCookie(Sessions.Configure);
        services.AddAntiforgery(form =>
        {
            form.Cookie.Name = "daybrief-form";
            form.Cookie.SecurePolicy = CookieSecurePolicy.SameAsRequest;
        });
        services.AddRateLimiter(limiter => Attempts.Configure(limiter, configuration));
    }

    public static void UsePeople(this WebApplication app)
    {
        app.UseAuthentication();
        app.UseAuthorization();
        app.UseRateLimiter();
        app.Lifetime.ApplicationStarted.Register(() => app.Services.GetRequiredService<SetUpLink>().Announce(app.Urls));
    }

    public static void MapPeople(this WebApplication app)
    {
        SetUpFirst.Map(app);
        SignIn.Map(app);
        SignOut.Map(app);
        ChangePassword.Map(app);
        AcceptLink.Map(app);
        GiveReaderCode.Map(app);
        var administration = app.MapGroup("/people").RequireAuthorization(Access.Administrator).RequireForm().ExcludeFromDescription();
        ListPeople.Map(administration);
        InvitePerson.Map(administration);
        ChangePerson.Map(administration);
        ListKeys.Map(administration);
        SetReaderCodes.Map(administration);
        ShowAudit.Map(administration);
    }
}
