namespace DayBrief.Service.Charts;

/// <summary>Straight arrows and heads on curves.</summary>
internal static class Arrow
{
    public static void Draw(Drawing drawing, Point from, Point to, Stroke stroke, double head = 6)
    {
        drawing.Line(from.X, from.Y, to.X, to.Y, stroke);
        Head(drawing, to, Math.Atan2(to.Y - from.Y, to.X - from.X), stroke, head);
    }

    /// <summary>A filled head with its tip at a point.</summary>
    /// <param name="drawing">Where.</param>
    /// <param name="tip">Its tip.</param>
    /// <param name="direction">Where it points, radians clockwise from the right.</param>
    /// <param name="stroke">Its tone.</param>
    /// <param name="size">Its length.</param>
    public static void Head(Drawing drawing, Point tip, double direction, Stroke stroke, double size = 6)
    {
        Point Back(double turn) => new(
            tip.X - (size * Math.Cos(direction + turn)),
            tip.Y - (size * Math.Sin(direction + turn)));
        drawing.Polygon([tip, Back(0.42), Back(-0.42)], fill: stroke.Ink);
    }
}
