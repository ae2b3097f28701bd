using DayBrief.Units;

namespace DayBrief.Soundings.Formats.Temp;

/// <summary>The first section of a part: when and where.</summary>
/// <remarks>[WMO306]: land YYGGId IIiii; ship D…D YYGGId 99LLL QLLLL MMMUU; mobile the same and hhhhi.</remarks>
/// <param name="Station">Station number, or the call sign of a ship or mobile station.</param>
/// <param name="DayAndHour">Null where coded as missing or impossible.</param>
/// <param name="InKnots">Whether speeds are in knots (day figures above 50) or m/s.</param>
/// <param name="WindTop">Id, the hundreds (C: tens) of hPa of the highest standard level with wind; null for "/".</param>
/// <param name="First">Index of the first group after it.</param>
internal sealed record TempHeader(string? Station, DayAndHour? DayAndHour, bool InKnots, int? WindTop, int First)
{
    public Position? Position { get; private init; }

    public Altitude? Elevation { get; private init; }

    /// <summary>Null if the part has no usable header (cut, or NIL).</summary>
    public static TempHeader? Read(TempPart part) => part.Name[0] switch
    {
        'T' or 'P' => Land(part),
        'U' or 'Q' => Moving(part, groups: 3),
        _ => Moving(part, groups: 4),
    };

    private static TempHeader? Land(TempPart part) =>
        part.Groups.Count >= 2 && part.Groups[0].IsWhole && part.Groups[1].IsWhole
            ? When(part.Groups[0], part.Groups[1].Text, 2)
            : null;

    private static TempHeader? Moving(TempPart part, int groups)
    {
        // The call sign may be missing; the date group is the one before the latitude.
        var sign = part.Groups.FindIndex(group => group.IsWhole && group.Text.StartsWith("99", StringComparison.Ordinal)) - 1;
        if (sign is < 0 or > 1 || part.Groups.Count < sign + 1 + groups || !part.Groups[sign].IsWhole)
        {
            return null;
        }

        var at = sign + 1;
        return When(part.Groups[sign], sign == 1 ? part.Groups[0].Text : null, at + groups) with
        {
            Position = Place(part.Groups[at], part.Groups[at + 1]),
            Elevation = groups == 4 ? Height(part.Groups[at + 3]) : null,
        };
    }

    private static TempHeader When(TempGroup when, string? station, int first)
    {
        var figures = when.Number(0, 2) ?? 0;
        var day = figures > 50 ? figures - 50 : figures;
        DayAndHour? time = day is >= 1 and <= 31 && when.Number(2, 2) is { } hour and <= 23 ? new(day, hour) : null;
        return new(station, time, figures > 50, when.Number(4, 1), first);
    }

    // Quadrants: 1 north-east, 3 south-east, 5 south-west, 7 north-west; tenths of degrees.
    private static Position? Place(TempGroup latitude, TempGroup longitude) =>
        (latitude.Number(2, 3), longitude.Number(0, 1), longitude.Number(1, 4)) is ({ } lat and <= 900, (1 or 3 or 5 or 7) and var quadrant, { } lon and <= 1800)
            ? Units.Position.FromDegrees((quadrant is 3 or 5 ? -lat : lat) / 10.0, (quadrant is 5 or 7 ? -lon : lon) / 10.0)
            : null;

    // The last figure tells the unit: 1 to 4 metres, 5 to 8 feet.
    private static Altitude? Height(TempGroup group) => (group.Number(0, 4), group.Number(4, 1)) switch
    {
        ({ } metres, >= 1 and <= 4) => Altitude.FromMetres(metres),
        ({ } feet, >= 5 and <= 8) => Altitude.FromFeet(feet),
        _ => null,
    };
}
