using System.Security.Cryptography;
using DayBrief.Service.Infrastructure;
using LiteDB;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Identity;

namespace DayBrief.Service.Features.People;

/// <summary>Codes of sites whose briefs are not for everybody: kept as hashes, remembered on a reader's device by a protected cookie.</summary>
/// <remarks>A code is chosen by people and so guessable; hence the slow hash of passwords, and the limit of attempts.</remarks>
internal sealed class ReaderCodes(Database database, Passwords passwords, IDataProtectionProvider protection, TimeProvider clock)
{
    private const string Collection = "readerCodes";

    private static readonly TimeSpan Remembered = TimeSpan.FromDays(365);

    private readonly IDataProtector _protector = protection.CreateProtector("DayBrief.ReaderCode");

    public IReadOnlySet<string> Sites() =>
        database.Collection(Collection).FindAll().Select(code => code["_id"].AsString).ToHashSet(StringComparer.Ordinal);

    public bool Asks(string site) => Find(site) is not null;

    /// <summary>Readers who gave an older code are asked again.</summary>
    public void Set(string site, string code) => database.Write(Collection, codes => codes.Upsert(new BsonDocument
    {
        ["_id"] = site,
        ["hash"] = passwords.Hash(Plain(code)),
        ["stamp"] = Secret.New(),
    }));

    public void Remove(string site) => database.Write(Collection, codes => codes.Delete(site));

    public bool IsRight(string site, string code) =>
        Find(site) is { } found && passwords.Check(found["hash"].AsString, Plain(code)) != PasswordVerificationResult.Failed;

    public void Remember(HttpContext context, string site)
    {
        if (Find(site) is not { } found)
            return;
        context.Response.Cookies.Append(Cookie(site), _protector.Protect(Mark(site, found)), new()
        {
            Expires = clock.GetUtcNow() + Remembered,
            HttpOnly = true,
            SameSite = SameSiteMode.Lax,
            Secure = context.Request.IsHttps,
            IsEssential = true,
        });
    }

    public bool IsRemembered(HttpContext context, string site)
    {
        if (Find(site) is not { } found || context.Request.Cookies[Cookie(site)] is not { } kept)
            return false;
        try
        {
            return _protector.Unprotect(kept) == Mark(site, found);
        }
        catch (CryptographicException)
        {
            return false;
        }
    }

    private BsonDocument? Find(string site) => database.Collection(Collection).FindById(site);

    private static string Mark(string site, BsonDocument code) => $"{site}\n{code["stamp"].AsString}";

    /// <summary>Any id makes a name that is allowed for a cookie.</summary>
    private static string Cookie(string site) => $"daybrief-code-{Secret.Hash(site)[..16]}";

    /// <summary>Read out on a field and typed on a phone: case and spaces make no difference.</summary>
    private static string Plain(string code) => Person.Plain(code);
}
