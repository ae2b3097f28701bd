using System.Text.Encodings.Web;
using Microsoft.AspNetCore.Authentication;
using Microsoft.Extensions.Options;

namespace DayBrief.Service.Features.People;

/// <summary>Authenticates programs by the header <c>X-Api-Key</c>.</summary>
internal sealed class ApiKeyHandler(
    IOptionsMonitor<AuthenticationSchemeOptions> options, ILoggerFactory logger, UrlEncoder encoder, AdminKey adminKey, ApiKeyStore keys)
    : AuthenticationHandler<AuthenticationSchemeOptions>(options, logger, encoder)
{
    public const string Header = "X-Api-Key";

    public const string SchemeName = "key";

    protected override Task<AuthenticateResult> HandleAuthenticateAsync() => Task.FromResult(Authenticate());

    private AuthenticateResult Authenticate()
    {
        if (Request.Headers[Header].ToString().Trim() is not { Length: > 0 } secret)
            return AuthenticateResult.NoResult();
        if (adminKey.Is(secret))
            return Success("environment", $"the key of {AdminKey.Variable}", KeyScope.Administer);
        if (keys.FindBySecret(secret) is not { } key)
            return AuthenticateResult.Fail("This key is not known.");
        var now = TimeProvider.GetUtcNow();
        if (!key.WorksAt(now))
            return AuthenticateResult.Fail(key.RevokedAt is null ? "This key has expired." : "This key has been revoked.");
        keys.NoteUse(key, now);
        return Success(key.Id, key.Name, key.Scope);
    }

    private static AuthenticateResult Success(string id, string name, KeyScope scope) =>
        AuthenticateResult.Success(new(Who.Key(id, name, scope, SchemeName), SchemeName));
}
