namespace DayBrief.Logs.Igc;

/// <summary>A B record: time of day, position, validity, two heights.</summary>
/// <remarks>[FAIIGC] appendix A, B record: columns 2–7 time, 8–15 latitude, 16–24 longitude, 25 validity, 26–30 pressure height,
/// 31–35 height of the satellite fix.</remarks>
internal static class IgcFix
{
    /// <summary>The fix with its time of day as <see cref="Fix.Seconds"/>; null where the record is malformed.</summary>
    public static Fix? Read(ReadOnlySpan<byte> line, IgcExtensions extensions)
    {
        if (TimeOfDay(line) is not { } seconds
            || Degrees(line, 8, 2, 90, 'N', 'S', extensions.FurtherMinutes(line, "LAD")) is not { } latitude
            || Degrees(line, 16, 3, 180, 'E', 'W', extensions.FurtherMinutes(line, "LOD")) is not { } longitude
            || IgcLine.At(line, 25) is not ('A' or 'V')
            || IgcLine.Height(line, 26) is not { } pressure
            || IgcLine.Height(line, 31) is not { } gnss)
        {
            return null;
        }

        return new Fix(seconds, latitude, longitude, pressure, gnss, IgcLine.At(line, 25) == 'A')
        {
            MotorRuns = extensions.IsHigh(line, "ENL") || extensions.IsHigh(line, "MOP"),
        };
    }

    private static double? TimeOfDay(ReadOnlySpan<byte> line) =>
        IgcLine.Digits(line, 2, 3) is { } hour and < 24 && IgcLine.Digits(line, 4, 5) is { } minute and < 60 && IgcLine.Digits(line, 6, 7) is { } second and < 60
            ? (3600 * hour) + (60 * minute) + second
            : null;

    /// <summary>Whole degrees, minutes with three places, and a letter.</summary>
    private static double? Degrees(ReadOnlySpan<byte> line, int from, int figures, int most, char positive, char negative, double furtherMinutes)
    {
        if (IgcLine.Digits(line, from, from + figures - 1) is not { } degrees || IgcLine.Digits(line, from + figures, from + figures + 4) is not { } thousandths)
            return null;
        var value = degrees + (((thousandths / 1000.0) + furtherMinutes) / 60);
        var letter = IgcLine.At(line, from + figures + 5);
        return thousandths >= 60_000 || value > most || (letter != positive && letter != negative) ? null : letter == negative ? -value : value;
    }
}
