using DayBrief.Flight.Gliders;
using DayBrief.Flight.Instruments;

namespace DayBrief.Flight.Centring;

/// <summary>Plan view of one straighten-and-shift: metres, the core as origin, the first circle's centre on the negative x axis, turning left.</summary>
/// <param name="OldCentre">Centre of the circle before.</param>
/// <param name="WorstPoint">Where the air is worst: the point of the circle farthest from the core.</param>
/// <param name="WorstReadingPoint">Where the pilot notices the weakest reading: later by the lag and the display's delay.</param>
/// <param name="RollOutPoint">Where the roll-out begins.</param>
/// <param name="Path">The flown way from there to a quarter turn of the new circle.</param>
/// <param name="NewCentre">Centre of the circle after.</param>
public sealed record ShiftPlan(
    PlanPoint OldCentre,
    PlanPoint WorstPoint,
    PlanPoint WorstReadingPoint,
    PlanPoint RollOutPoint,
    IReadOnlyList<PlanPoint> Path,
    PlanPoint NewCentre)
{
    /// <summary>The plan for a circle, an instrument, a roll-out and the distance of the circle's centre from the core.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Offset negative.</exception>
    public static ShiftPlan For(Circle circle, Variometer instrument, RollOut rollOut, double offsetM)
    {
        ArgumentNullException.ThrowIfNull(circle);
        ArgumentNullException.ThrowIfNull(instrument);
        ArgumentNullException.ThrowIfNull(rollOut);
        ArgumentOutOfRangeException.ThrowIfNegative(offsetM);
        var late = instrument.LagDeg(circle.PeriodS) + (circle.RateDegS * instrument.DisplayDelayS);
        var start = 180 + late + rollOut.AfterWorstReadingDeg;
        var (path, centre) = CentreShift.Path(circle, circle.BankDeg, rollOut.LevelS, quarterTurns: 1);
        return new(
            new(-offsetM, 0),
            On(180),
            On(180 + late),
            On(start),
            [.. path.Select(point => Placed(point))],
            Placed(centre));

        PlanPoint On(double degrees) => new(
            -offsetM + (circle.RadiusM * Math.Cos(degrees * Math.PI / 180)), circle.RadiusM * Math.Sin(degrees * Math.PI / 180));

        // the path begins at the origin heading along x; on the circle the heading is a quarter turn ahead of the place
        PlanPoint Placed((double X, double Y) point)
        {
            var heading = (start + 90) * Math.PI / 180;
            var from = On(start);
            return new(
                from.XM + (point.X * Math.Cos(heading)) - (point.Y * Math.Sin(heading)),
                from.YM + (point.X * Math.Sin(heading)) + (point.Y * Math.Cos(heading)));
        }
    }
}

/// <summary>A place in a plan view.</summary>
/// <param name="XM">To the right, m.</param>
/// <param name="YM">Upwards on the page, m.</param>
public readonly record struct PlanPoint(double XM, double YM);
