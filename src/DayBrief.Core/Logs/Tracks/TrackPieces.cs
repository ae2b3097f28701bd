using DayBrief.Numerics;

namespace DayBrief.Logs.Tracks;

/// <summary>Cuts a log at its gaps and lays a smooth curve through each piece, once a second.</summary>
internal static class TrackPieces
{
    /// <summary>Gaps of more than this, or of three intervals, cut a track: a turn takes some 24 s, and half of it must not be invented.</summary>
    private const double LongestGapS = 12;

    /// <summary>No glider flies so fast over the ground: a fix that lies farther from both neighbours is an error of the satellites. 540 km/h;
    /// common practice, no source.</summary>
    private const double FastestMs = 150;

    /// <summary>Mean radius of the earth, m; over a piece of a flight the plane's error is below that of the fixes.</summary>
    private const double EarthRadiusM = 6_371_000;

    public static IEnumerable<Track> Of(FlightLog log)
    {
        var gnss = log.HeightFrom == HeightSource.Gnss;
        var usable = Sane([.. log.Fixes.Where(fix => !gnss || fix.Is3D)]);
        var longest = Math.Max(LongestGapS, 3 * log.IntervalS);
        var from = 0;
        for (var i = 1; i <= usable.Count; i++)
        {
            if (i < usable.Count && usable[i].Seconds - usable[i - 1].Seconds <= longest)
                continue;
            if (i - from >= 4)
                yield return Smooth(usable.GetRange(from, i - from), gnss);
            from = i;
        }
    }

    /// <summary>Without fixes that jump away from both neighbours.</summary>
    private static List<Fix> Sane(Fix[] fixes)
    {
        var kept = new List<Fix>(fixes.Length);
        for (var i = 0; i < fixes.Length; i++)
        {
            var jumps = (i == 0 || IsTooFast(fixes[i - 1], fixes[i])) && (i == fixes.Length - 1 || IsTooFast(fixes[i], fixes[i + 1]));
            if (!jumps || fixes.Length < 3)
                kept.Add(fixes[i]);
        }

        return kept;
    }

    private static bool IsTooFast(Fix a, Fix b)
    {
        var (east, north) = Plane(a, b);
        return Math.Sqrt((east * east) + (north * north)) > FastestMs * (b.Seconds - a.Seconds);
    }

    private static (double EastM, double NorthM) Plane(Fix origin, Fix fix)
    {
        const double Radian = Math.PI / 180;
        var turned = Math.IEEERemainder(fix.LongitudeDegrees - origin.LongitudeDegrees, 360);
        return (EarthRadiusM * Radian * turned * Math.Cos(Radian * origin.LatitudeDegrees),
            EarthRadiusM * Radian * (fix.LatitudeDegrees - origin.LatitudeDegrees));
    }

    private static Track Smooth(List<Fix> fixes, bool gnss)
    {
        var times = fixes.ConvertAll(fix => fix.Seconds - fixes[0].Seconds).ToArray();
        var places = fixes.ConvertAll(fix => Plane(fixes[0], fix));
        var east = new SmoothCurve(times, [.. places.Select(place => place.EastM)]);
        var north = new SmoothCurve(times, [.. places.Select(place => place.NorthM)]);
        var height = new SmoothCurve(times, [.. fixes.Select(fix => gnss ? fix.GnssHeightM : fix.PressureHeightM)]);
        var count = (int)Math.Floor(times[^1]) + 1;
        return new Track(
            fixes[0].Seconds,
            Sampled(east.At, count),
            Sampled(north.At, count),
            Sampled(height.At, count),
            Sampled(east.SlopeAt, count),
            Sampled(north.SlopeAt, count))
        {
            Motor = fixes.Exists(fix => fix.MotorRuns) ? Motor(fixes, count) : null,
        };
    }

    private static double[] Sampled(Func<double, double> curve, int count)
    {
        var values = new double[count];
        for (var i = 0; i < count; i++)
            values[i] = curve(i);
        return values;
    }

    private static bool[] Motor(List<Fix> fixes, int count)
    {
        var runs = new bool[count];
        var last = 0;
        for (var i = 0; i < count; i++)
        {
            while (last + 1 < fixes.Count && fixes[last + 1].Seconds - fixes[0].Seconds <= i)
                last++;
            runs[i] = fixes[last].MotorRuns;
        }

        return runs;
    }
}
