namespace DayBrief.Service.Charts;

/// <summary>The upright rectangle that a chart's curves stay in.</summary>
internal readonly record struct Frame(double Left, double Top, double Right, double Bottom)
{
    public double Width => Right - Left;

    public double Height => Bottom - Top;

    public bool Holds(Point p) => p.X >= Left && p.X <= Right && p.Y >= Top && p.Y <= Bottom;

    /// <summary>The parts of a line through points that lie inside.</summary>
    public IEnumerable<IReadOnlyList<Point>> Clip(IReadOnlyList<Point> points)
    {
        var piece = new List<Point>();
        for (var i = 0; i + 1 < points.Count; i++)
        {
            if (Clip(points[i], points[i + 1]) is not var (from, to))
                continue;
            if (piece.Count > 0 && piece[^1] != from)
            {
                yield return piece;
                piece = [];
            }

            if (piece.Count == 0)
                piece.Add(from);
            piece.Add(to);
        }

        if (piece.Count > 1)
            yield return piece;
    }

    /// <summary>The part of a straight line inside (after Liang and Barsky); null when there is none.</summary>
    public (Point From, Point To)? Clip(Point a, Point b)
    {
        var (start, end) = (0.0, 1.0);
        var (dx, dy) = (b.X - a.X, b.Y - a.Y);
        foreach (var (run, room) in new[] { (-dx, a.X - Left), (dx, Right - a.X), (-dy, a.Y - Top), (dy, Bottom - a.Y) })
        {
            if (run == 0 && room < 0)
                return null;
            if (run < 0)
                start = Math.Max(start, room / run);
            if (run > 0)
                end = Math.Min(end, room / run);
        }

        Point At(double share) => share == 0 ? a : share == 1 ? b : new(a.X + (share * dx), a.Y + (share * dy));
        return start < end ? (At(start), At(end)) : null;
    }
}
