using DayBrief.Units;

namespace DayBrief.Service.Charts;

/// <summary>A wind as the weather services plot it: a shaft towards where it blows from, feathered by its speed.</summary>
/// <remarks>[NWSBarbs] speed to the nearest 5 kt: half feather 5, feather 10, pennant 50; less than 3 kt is a circle.
/// The feathers stand on the side of low pressure: seen downwind on the left in the northern hemisphere.</remarks>
internal static class WindBarb
{
    private static readonly Stroke Shaft = new(Ink.Black, 1.1);

    /// <summary>The feathers of a speed.</summary>
    public static (int Pennants, int Full, int Half) Feathers(double knots)
    {
        var fives = (int)Math.Floor((knots / 5) + 0.5);
        return (fives / 10, fives % 10 / 2, fives % 2);
    }

    /// <summary>Draws one with the end of its shaft at a point.</summary>
    public static void Draw(Drawing drawing, Point at, Wind wind, double length, bool southern = false)
    {
        var (pennants, full, half) = Feathers(wind.Speed.Knots);
        if (pennants + full + half == 0)
        {
            drawing.Circle(at.X, at.Y, 0.16 * length, Shaft);
            return;
        }

        var (sin, cos) = Math.SinCos(wind.FromDegrees * Math.PI / 180);
        Point On(double along, double aside) => new(
            at.X + (along * sin) + (aside * cos),
            at.Y - (along * cos) + (aside * sin));
        var gap = 0.15 * length;
        var feather = (southern ? -1 : 1) * 0.42 * length;
        var lean = 0.14 * length;
        var from = pennants == 0 && full == 0 ? length - gap : length;
        drawing.Line(at.X, at.Y, On(length, 0).X, On(length, 0).Y, Shaft);
        for (var i = 0; i < pennants; i++, from -= 1.5 * gap)
            drawing.Polygon([On(from, 0), On(from, feather), On(from - (1.5 * gap), 0)], Shaft, Ink.Black);
        from -= pennants > 0 && full + half > 0 ? 0.4 * gap : 0;
        for (var i = 0; i < full; i++, from -= gap)
            drawing.Polyline([On(from, 0), On(from + lean, feather)], Shaft);
        if (half > 0)
            drawing.Polyline([On(from, 0), On(from + (lean / 2), feather / 2)], Shaft);
    }
}
