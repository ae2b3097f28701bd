namespace DayBrief.Service.Charts;

/// <summary>Where things lie on the plan of centring. The core is the origin; the circle stands to its left, so the weakest
/// air is at the far left and 90° of turn later the heading is to the right, for the core. Metres, y up.</summary>
internal sealed class CirclePlanGeometry(CirclePlanInput input)
{
    private readonly double _side = input.TurnsRight ? -1 : 1;

    public Point Centre => new(-input.OffsetM, 0);

    /// <summary>A place on the first circle, by degrees of turn after the weakest air.</summary>
    public Point OnCircle(double turnDeg, double radiusM)
    {
        var angle = Math.PI + (_side * turnDeg * Math.PI / 180);
        return new(Centre.X + (radiusM * Math.Cos(angle)), Centre.Y + (radiusM * Math.Sin(angle)));
    }

    public Point OnCircle(double turnDeg) => OnCircle(turnDeg, input.CircleRadiusM);

    /// <summary>Direction of flight there, as a unit step.</summary>
    public Point Heading(double turnDeg)
    {
        var angle = Math.PI + (_side * (turnDeg + 90) * Math.PI / 180);
        return new(Math.Cos(angle), Math.Sin(angle));
    }

    /// <summary>Beginning and end of the straight stretch.</summary>
    public (Point From, Point To) Straight
    {
        get
        {
            var (from, heading) = (OnCircle(input.StraightAfterDeg), Heading(input.StraightAfterDeg));
            return (from, new(from.X + (input.ShiftM * heading.X), from.Y + (input.ShiftM * heading.Y)));
        }
    }

    /// <summary>Centre of the circle after the move.</summary>
    public Point NewCentre
    {
        get
        {
            var heading = Heading(input.StraightAfterDeg);
            return new(Centre.X + (input.ShiftM * heading.X), Centre.Y + (input.ShiftM * heading.Y));
        }
    }

    /// <summary>Distance of the new circle's centre from the core.</summary>
    public double NewOffsetM => Math.Sqrt((NewCentre.X * NewCentre.X) + (NewCentre.Y * NewCentre.Y));

    /// <summary>Points of a stretch of the first circle, from one turn to another.</summary>
    public IEnumerable<Point> Arc(double fromDeg, double toDeg, double radiusM) =>
        Enumerable.Range(0, 25).Select(i => OnCircle(fromDeg + ((toDeg - fromDeg) * i / 24), radiusM));
}
