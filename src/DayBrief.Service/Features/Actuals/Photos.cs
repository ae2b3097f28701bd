using System.Buffers.Binary;
using System.Globalization;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Actuals;

/// <summary>The photo of a sheet that was filled in by hand: kept, never read. What a camera writes beside the picture (place, time, its
/// number) is left out.</summary>
internal static class Photos
{
    public const int MaxBytes = 8 * 1024 * 1024;

    private const string Before = "data:image/jpeg;base64,";

    public static string AddressOf(string site, DateOnly date, string id) =>
        string.Create(CultureInfo.InvariantCulture, $"/api/v1/days/{Uri.EscapeDataString(site)}/{date:yyyy-MM-dd}/actuals/{id}/photo");

    /// <summary>The picture of a data URL; null and an error where it is none.</summary>
    public static byte[]? OfDataUrl(string url, FieldErrors errors)
    {
        var bytes = new byte[Math.Max(0, url.Length - Before.Length)];
        if (url.StartsWith(Before, StringComparison.Ordinal) && Convert.TryFromBase64Chars(url.AsSpan(Before.Length), bytes, out var length))
            return Bare(bytes.AsSpan(0, length), errors);
        errors.Add("photo", $"Needs a photo as JPEG.");
        return null;
    }

    /// <summary>A JPEG without its APP and COM segments but JFIF and Adobe's colours; null and an error for anything else.</summary>
    /// <remarks>ITU-T T.81, annex B: marker segments with a length of two bytes up to the start of scan.</remarks>
    public static byte[]? Bare(ReadOnlySpan<byte> jpeg, FieldErrors errors)
    {
        if (jpeg.Length > MaxBytes)
        {
            errors.Add("photo", $"Is larger than {MaxBytes / 1024 / 1024} MB; take it smaller.");
            return null;
        }

        var kept = new List<byte>(jpeg.Length);
        if (jpeg.Length > 4 && jpeg[0] == 0xFF && jpeg[1] == 0xD8)
        {
            kept.AddRange(jpeg[..2]);
            for (var at = 2; at + 4 <= jpeg.Length && jpeg[at] == 0xFF;)
            {
                var marker = jpeg[at + 1];
                var length = 2 + BinaryPrimitives.ReadUInt16BigEndian(jpeg[(at + 2)..]);
                if (marker == 0xDA)
                {
                    kept.AddRange(jpeg[at..]);
                    return [.. kept];
                }

                if (at + length > jpeg.Length)
                    break;
                if (marker is not ((>= 0xE1 and <= 0xED) or 0xEF or 0xFE))
                    kept.AddRange(jpeg.Slice(at, length));
                at += length;
            }
        }

        errors.Add("photo", $"Needs a photo as JPEG.");
        return null;
    }
}
