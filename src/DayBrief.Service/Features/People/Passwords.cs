using DayBrief.Texts;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.Options;

namespace DayBrief.Service.Features.People;

/// <summary>Hashes and checks passwords with the framework's hasher (PBKDF2 with HMAC-SHA-512, a salt each).</summary>
/// <remarks>NIST SP 800-63B, 5.1.1: length counts, not a mixture of kinds of characters; every character is allowed, and long
/// ones too. 210,000 rounds: OWASP Password Storage Cheat Sheet for this function.</remarks>
internal sealed class Passwords
{
    public const int Least = 12;

    /// <summary>Longer ones would only make the hasher work.</summary>
    public const int Most = 256;

    private const int FewestDifferent = 5;

    private readonly IPasswordHasher<Passwords> _hasher;
    private readonly Lazy<string> _nobodys;

    public Passwords()
        : this(new PasswordHasher<Passwords>(Options.Create(new PasswordHasherOptions { IterationCount = 210_000 })))
    {
    }

    internal Passwords(IPasswordHasher<Passwords> hasher) => (_hasher, _nobodys) = (hasher, new(() => Hash(Secret.New())));

    public string Hash(string password) => _hasher.HashPassword(this, password);

    /// <summary>Whether it is the password behind the hash. The same work where there is none, so that time tells nothing.</summary>
    public PasswordVerificationResult Check(string? hash, string password)
    {
        // Made by the first check of either kind, so that it does not tell them apart.
        var nobodys = _nobodys.Value;
        var result = _hasher.VerifyHashedPassword(this, hash ?? nobodys, password.Length > Most ? "" : password);
        return hash is null ? PasswordVerificationResult.Failed : result;
    }

    /// <summary>Why a new password cannot be taken, null when it can.</summary>
    public static Words? Refuse(string password, string name, string? email)
    {
        if (password.EnumerateRunes().Count() < Least)
            return "The password needs at least 12 characters. A few words in a row are easy to remember and hard to guess.";
        if (password.Length > Most)
            return "The password can have at most 256 characters.";
        return IsGuessable(password, name, email)
            ? Words.Of("This password is easy to guess: it repeats a few characters, or is your name. Choose another.")
            : null;
    }

    private static bool IsGuessable(string password, string name, string? email)
    {
        var plain = Person.Plain(password);
        return plain == Person.Plain(name)
            || (email is not null && plain == Person.Plain(email))
            || plain.EnumerateRunes().Distinct().Count() < FewestDifferent;
    }
}
