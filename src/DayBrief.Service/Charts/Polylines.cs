namespace DayBrief.Service.Charts;

/// <summary>Lines through many points.</summary>
internal static class Polylines
{
    /// <summary>The same line with fewer points, nowhere further from it than a tolerance (after Douglas and Peucker).</summary>
    public static IReadOnlyList<Point> Simplify(IReadOnlyList<Point> points, double tolerance)
    {
        if (points.Count < 3)
            return points;
        var (a, b) = (points[0], points[^1]);
        var (far, distance) = (0, 0.0);
        for (var i = 1; i + 1 < points.Count; i++)
        {
            if (Distance(points[i], a, b) is var d && d > distance)
                (far, distance) = (i, d);
        }

        return distance <= tolerance
            ? [a, b]
            : [.. Simplify([.. points.Take(far + 1)], tolerance), .. Simplify([.. points.Skip(far)], tolerance).Skip(1)];
    }

    /// <summary>Distance of a point from the straight line between two others.</summary>
    internal static double Distance(Point p, Point a, Point b)
    {
        var (dx, dy) = (b.X - a.X, b.Y - a.Y);
        var length = Math.Sqrt((dx * dx) + (dy * dy));
        return length == 0
            ? Math.Sqrt(((p.X - a.X) * (p.X - a.X)) + ((p.Y - a.Y) * (p.Y - a.Y)))
            : Math.Abs(((p.X - a.X) * dy) - ((p.Y - a.Y) * dx)) / length;
    }
}
