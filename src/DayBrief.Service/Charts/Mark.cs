namespace DayBrief.Service.Charts;

/// <summary>A point in a drawing: x to the right, y down.</summary>
internal readonly record struct Point(double X, double Y);

/// <summary>One thing drawn.</summary>
internal abstract record Mark;

/// <summary>A line through points, or the area inside it.</summary>
internal sealed record PathMark(IReadOnlyList<Point> Points, bool Closed, Stroke? Stroke, Ink? Fill) : Mark;

/// <summary>A circle.</summary>
internal sealed record CircleMark(Point Centre, double Radius, Stroke? Stroke, Ink? Fill) : Mark;

/// <summary>A line of text on its baseline.</summary>
internal sealed record TextMark(Point At, string Text, TextStyle Style) : Mark;
