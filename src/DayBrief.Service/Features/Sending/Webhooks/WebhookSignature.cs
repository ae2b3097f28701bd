using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using DayBrief.Service.Features.Sites;

namespace DayBrief.Service.Features.Sending.Webhooks;

/// <summary>How a receiver knows that a POST is ours, untouched and not a repetition.</summary>
/// <remarks>[StandardWebhooks2023]: HMAC-SHA-256 over "id.timestamp.body", in three headers.</remarks>
internal static class WebhookSignature
{
    public const string IdHeader = "webhook-id";
    public const string TimeHeader = "webhook-timestamp";
    public const string SignatureHeader = "webhook-signature";

    public static string Of(byte[] key, string id, DateTimeOffset at, string body)
    {
        var signed = string.Create(CultureInfo.InvariantCulture, $"{id}.{at.ToUnixTimeSeconds()}.{body}");
        return $"v1,{Convert.ToBase64String(HMACSHA256.HashData(key, Encoding.UTF8.GetBytes(signed)))}";
    }

    /// <summary>A secret of 32 bytes.</summary>
    public static string NewSecret() => WebhookJson.Prefix + Convert.ToBase64String(RandomNumberGenerator.GetBytes(32));
}
