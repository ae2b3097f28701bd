namespace DayBrief.Service.Charts;

/// <summary>Parallel lines inside a polygon (even–odd rule).</summary>
internal static class Hatching
{
    public static IEnumerable<(Point From, Point To)> Lines(IReadOnlyList<Point> polygon, double spacing, double degrees)
    {
        var (sin, cos) = Math.SinCos(-degrees * Math.PI / 180);
        Point Turned(Point p) => new((p.X * cos) + (p.Y * sin), (p.Y * cos) - (p.X * sin));
        Point Back(double x, double y) => new((x * cos) - (y * sin), (x * sin) + (y * cos));
        var turned = polygon.Select(Turned).ToArray();
        if (turned.Length < 3)
            yield break;
        var last = turned.Max(p => p.Y);
        for (var y = (Math.Floor(turned.Min(p => p.Y) / spacing) + 0.5) * spacing; y < last; y += spacing)
        {
            var crossings = Crossings(turned, y).Order().ToArray();
            for (var i = 0; i + 1 < crossings.Length; i += 2)
                yield return (Back(crossings[i], y), Back(crossings[i + 1], y));
        }
    }

    private static IEnumerable<double> Crossings(Point[] polygon, double y)
    {
        for (var i = 0; i < polygon.Length; i++)
        {
            var (a, b) = (polygon[i], polygon[(i + 1) % polygon.Length]);
            if (a.Y <= y != b.Y <= y)
                yield return a.X + ((y - a.Y) / (b.Y - a.Y) * (b.X - a.X));
        }
    }
}
