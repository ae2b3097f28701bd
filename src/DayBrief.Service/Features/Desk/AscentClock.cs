using System.Globalization;

namespace DayBrief.Service.Features.Desk;

/// <summary>Reads the hour of an ascent as those who work with ascents write it: 6, 06, 0600, 06Z, 06:00, 06 UTC.</summary>
internal static class AscentClock
{
    private static readonly string[] Forms = ["H:mm", "HH:mm", "H.mm", "HH.mm", "HHmm", "HH", "%H"];

    /// <summary>The time that was answered for the ascent in use; null while it is no time.</summary>
    public static DateTimeOffset? Answered(DeskFields fields) =>
        TryRead(fields["ascentTime"], out var time)
        && DateOnly.TryParse(fields.NullIfEmpty("ascentDate") ?? fields["date"], CultureInfo.InvariantCulture, out var date)
            ? new(date.ToDateTime(time), TimeSpan.Zero)
            : null;

    public static bool TryRead(string text, out TimeOnly time)
    {
        var plain = text.Trim().ToUpperInvariant();
        foreach (var end in new[] { "UTC", "Z" })
            plain = plain.EndsWith(end, StringComparison.Ordinal) ? plain[..^end.Length].TrimEnd() : plain;
        return TimeOnly.TryParseExact(plain, Forms, CultureInfo.InvariantCulture, DateTimeStyles.None, out time);
    }
}
