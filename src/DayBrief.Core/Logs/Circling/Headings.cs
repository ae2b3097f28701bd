namespace DayBrief.Logs.Circling;

/// <summary>Which way something moves, second by second, counted on through whole turns.</summary>
internal static class Headings
{
    /// <summary>Slower than this over the ground a direction means nothing, m/s.</summary>
    private const double SlowestMs = 2;

    /// <summary>Degrees from north over east, without jumps at 360°, of velocities less a wind.</summary>
    public static double[] Of(ReadOnlySpan<double> eastMs, ReadOnlySpan<double> northMs, double windEastMs = 0, double windNorthMs = 0)
    {
        var headings = new double[eastMs.Length];
        for (var i = 0; i < headings.Length; i++)
        {
            var (east, north) = (eastMs[i] - windEastMs, northMs[i] - windNorthMs);
            var before = i > 0 ? headings[i - 1] : 0;
            headings[i] = (east * east) + (north * north) < SlowestMs * SlowestMs
                ? before
                : before + Math.IEEERemainder((Math.Atan2(east, north) * 180 / Math.PI) - before, 360);
        }

        return headings;
    }
}
