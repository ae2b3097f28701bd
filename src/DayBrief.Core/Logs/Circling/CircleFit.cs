namespace DayBrief.Logs.Circling;

/// <summary>Wind and airspeed of somebody who circles: the circle that the ground velocities of whole turns lie on.</summary>
/// <remarks>
/// [Kasa1976] algebraic least squares of x² + y² = 2ax + 2by + c, unweighted; its centre is the wind, its radius the airspeed. Used so with
/// flight recorders of birds' and gliders' kind by [Weinzierl2016]. Needs velocities all round the circle; fewer than eight give none.
/// </remarks>
/// <param name="EastMs">Wind towards east, m/s.</param>
/// <param name="NorthMs">Wind towards north, m/s.</param>
/// <param name="AirspeedMs">True airspeed, m/s.</param>
/// <param name="ResidualMs">Root mean square distance of the velocities from the circle, m/s.</param>
internal readonly record struct CircleFit(double EastMs, double NorthMs, double AirspeedMs, double ResidualMs)
{
    private const int Fewest = 8;

    public static CircleFit? Of(ReadOnlySpan<double> eastMs, ReadOnlySpan<double> northMs)
    {
        if (eastMs.Length < Fewest)
            return null;
        var (meanX, meanY) = (Mean(eastMs), Mean(northMs));
        double xx = 0, xy = 0, yy = 0, xz = 0, yz = 0, zz = 0;
        for (var i = 0; i < eastMs.Length; i++)
        {
            var (x, y) = (eastMs[i] - meanX, northMs[i] - meanY);
            var z = (x * x) + (y * y);
            (xx, xy, yy, xz, yz, zz) = (xx + (x * x), xy + (x * y), yy + (y * y), xz + (x * z), yz + (y * z), zz + z);
        }

        var determinant = (xx * yy) - (xy * xy);
        if (!(determinant > 1e-9 * xx * yy))
            return null;
        var (a, b) = (0.5 * ((xz * yy) - (yz * xy)) / determinant, 0.5 * ((yz * xx) - (xz * xy)) / determinant);
        var radius = Math.Sqrt((a * a) + (b * b) + (zz / eastMs.Length));
        return new(meanX + a, meanY + b, radius, Residual(eastMs, northMs, meanX + a, meanY + b, radius));
    }

    private static double Residual(ReadOnlySpan<double> eastMs, ReadOnlySpan<double> northMs, double a, double b, double radius)
    {
        var sum = 0.0;
        for (var i = 0; i < eastMs.Length; i++)
        {
            var off = Math.Sqrt(((eastMs[i] - a) * (eastMs[i] - a)) + ((northMs[i] - b) * (northMs[i] - b))) - radius;
            sum += off * off;
        }

        return Math.Sqrt(sum / eastMs.Length);
    }

    private static double Mean(ReadOnlySpan<double> values)
    {
        var sum = 0.0;
        foreach (var value in values)
            sum += value;
        return sum / values.Length;
    }
}
