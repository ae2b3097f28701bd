namespace DayBrief.Soundings.Formats.Temp;

/// <summary>The elements of a level.</summary>
/// <remarks>[WMO306] FM 35, code tables 0777 (depression) and 3931 (temperature).</remarks>
internal static class TempElements
{
    /// <summary>TTT of a TTTDD group: tenths of a degree, negative where the third figure is odd.</summary>
    public static double? Temperature(TempGroup group) =>
        group.Number(0, 3) is { } tenths ? (tenths % 2 == 0 ? tenths : -tenths) / 10.0 : null;

    /// <summary>DD: 00–50 tenths of a degree, 56–99 whole degrees and 50; 51–55 are not used.</summary>
    public static double? Depression(TempGroup group) => group.Number(3, 2) switch
    {
        null or (>= 51 and <= 55) => null,
        <= 50 and var tenths => tenths / 10.0,
        var degrees => degrees.Value - 50,
    };

    /// <summary>Dew point of a TTTDD group, to the tenth that the code can carry.</summary>
    public static double? DewPoint(TempGroup group) =>
        Temperature(group) - Depression(group) is { } dewPoint ? Math.Round(dewPoint, 1) : null;

    /// <summary>ddfff: tens of degrees; 500 added to the speed means 5° more. Null where missing or impossible.</summary>
    public static (double FromDeg, int Speed)? Wind(TempGroup group)
    {
        if (group.Number(0, 2) is not { } tens || group.Number(2, 3) is not { } speed)
        {
            return null;
        }

        var fromDeg = (10 * tens) + (speed >= 500 ? 5 : 0);
        return fromDeg <= 360 ? (fromDeg, speed % 500) : null;
    }

    /// <summary>PPP in hPa; the thousand is dropped in A and B, C and D are in tenths.</summary>
    public static double? Pressure(TempGroup group, bool upper) => group.Number(2, 3) switch
    {
        null => null,
        var tenths when upper => tenths.Value / 10.0,
        < 100 and var dropped => dropped + 1000,
        var whole => whole.Value,
    };
}
