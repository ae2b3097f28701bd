namespace DayBrief.Soundings.Formats.Temp;

/// <summary>The first section of a part: when and where.</summary>
/// <param name="Station">Station number, or the call sign of a ship or mobile station.</param>
/// <param name="DayAndHour">Null where coded as missing or impossible.</param>
/// <param name="InKnots">Whether speeds are in knots (day figures above 50) or m/s.</param>
/// <param name="WindTop">Id, the hundreds (C: tens) of hPa of the highest standard level with wind; null for "/".</param>
/// <param name="First">Index of the first group after it.</param>
internal sealed record TempHeader(string? Station, DayAndHour? DayAndHour, bool InKnots, int? WindTop, int First)
{
    /// <summary>Null if the part has no usable header (cut, or NIL).</summary>
    public static TempHeader? Read(TempPart part) => part.Name[0] is 'T' or 'P' ? Land(part, 0) : null;

    private static TempHeader? Land(TempPart part, int at)
    {
        if (part.Groups.Count < at + 2 || !part.Groups[at].IsWhole || !part.Groups[at + 1].IsWhole)
        {
            return null;
        }

        var (when, where) = (part.Groups[at], part.Groups[at + 1]);
        var figures = when.Number(0, 2) ?? 0;
        var day = figures > 50 ? figures - 50 : figures;
        DayAndHour? time = day is >= 1 and <= 31 && when.Number(2, 2) is { } hour and <= 23 ? new(day, hour) : null;
        return new(where.Text, time, figures > 50, when.Number(4, 1), at + 2);
    }
}
