using System.Globalization;

namespace DayBrief.Service.Features.Desk;

/// <summary>Reads the hour of an ascent as those who work with ascents write it: 6, 06, 0600, 06Z, 06:00, 06 UTC.</summary>
internal static class AscentClock
{
    private static readonly string[] Forms = ["H:mm", "HH:mm", "H.mm", "HH.mm", "HHmm", "HH", "%H"];

    public static bool TryRead(string text, out TimeOnly time)
    {
        var plain = text.Trim().ToUpperInvariant();
        foreach (var end in new[] { "UTC", "Z" })
            plain = plain.EndsWith(end, StringComparison.Ordinal) ? plain[..^end.Length].TrimEnd() : plain;
        return TimeOnly.TryParseExact(plain, Forms, CultureInfo.InvariantCulture, DateTimeStyles.None, out time);
    }
}
