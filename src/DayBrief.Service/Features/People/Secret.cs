using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;

namespace DayBrief.Service.Features.People;

/// <summary>Random secrets of 256 bits: tokens of links, and API keys. Only their hash is kept.</summary>
/// <remarks>A slow hash protects what people choose, because it can be guessed. 256 random bits cannot: SHA-256 (FIPS 180-4)
/// keeps the secret as safe as it is, and lets every request be checked at once.</remarks>
internal static class Secret
{
    public static string New() => Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(32));

    public static string Hash(string secret) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(secret)));

    /// <summary>Takes the same time wherever the first difference lies.</summary>
    public static bool Matches(string secret, string? hash) =>
        hash is not null
        && CryptographicOperations.FixedTimeEquals(Encoding.ASCII.GetBytes(Hash(secret)), Encoding.ASCII.GetBytes(hash));
}
