namespace DayBrief.Logs.Igc;

/// <summary>The date header: <c>HFDTEddmmyy</c>, or <c>HFDTEDATE:ddmmyy,nn</c> with or without the flight's number.</summary>
internal static class IgcDate
{
    /// <summary>The UTC date; null where the line is no date header or holds none.</summary>
    public static DateOnly? Read(ReadOnlySpan<byte> line)
    {
        if (line.Length < 11 || line[0] != 'H' || !line[2..5].SequenceEqual("DTE"u8))
            return null;
        for (var i = 5; i + 6 <= line.Length; i++)
        {
            if (IgcLine.Digits(line, i + 1, i + 6) is not { } digits)
                continue;
            var (day, month, year) = (digits / 10_000, digits / 100 % 100, Century(digits % 100));
            return month is >= 1 and <= 12 && day >= 1 && day <= DateTime.DaysInMonth(year, month) ? new DateOnly(year, month, day) : null;
        }

        return null;
    }

    /// <summary>Recorders of this kind exist since the 1990s: 80 to 99 are of the last century.</summary>
    private static int Century(int year) => year >= 80 ? 1900 + year : 2000 + year;
}
