using Microsoft.AspNetCore.Identity;

namespace DayBrief.Service.Features.People;

public sealed class PasswordsTests
{
    /// <summary>Nearly all the time of a check goes into one verification, as long as the hash's header asks: format, function, rounds and
    /// salt are its first 13 bytes (version 3 of the framework's format, as its source describes it).</summary>
    [Fact]
    public void A_name_that_nobody_has_costs_the_same_work_as_a_known_one()
    {
        var hasher = new Counting();
        var passwords = new Passwords(hasher);
        var known = passwords.Hash("some password of mine");
        Assert.Equal(PasswordVerificationResult.Failed, passwords.Check(known, "another password"));
        Assert.Equal(PasswordVerificationResult.Failed, passwords.Check(null, "another password"));
        Assert.Equal(2, hasher.Verified.Count);
        Assert.NotEqual(hasher.Verified[0], hasher.Verified[1]);
        Assert.Equal(Work(hasher.Verified[0]), Work(hasher.Verified[1]));
    }

    /// <summary>OWASP Password Storage Cheat Sheet: 210,000 rounds for PBKDF2 with HMAC-SHA-512 (function 2 in the header).</summary>
    [Fact]
    public void A_hash_says_how_much_work_it_is()
    {
        var header = Work(new Passwords().Hash("some password of mine"));
        Assert.Equal([1, 0, 0, 0, 2, .. BitConverter.GetBytes(210_000).Reverse()], header[..9]);
    }

    private static byte[] Work(string hash) => Convert.FromBase64String(hash)[..13];

    private sealed class Counting : IPasswordHasher<Passwords>
    {
        private readonly PasswordHasher<Passwords> _hasher = new();

        public List<string> Verified { get; } = [];

        public string HashPassword(Passwords user, string password) => _hasher.HashPassword(user, password);

        public PasswordVerificationResult VerifyHashedPassword(Passwords user, string hashedPassword, string providedPassword)
        {
            Verified.Add(hashedPassword);
            return _hasher.VerifyHashedPassword(user, hashedPassword, providedPassword);
        }
    }
}
