using DayBrief.Flight.Gliders;
using DayBrief.Flight.Instruments;

namespace DayBrief.Flight.Centring;

/// <summary>Where to begin to roll out so that the straight stretch leads over the core, and for how long.</summary>
/// <param name="AfterWorstReadingDeg">Degrees of turn after the weakest reading is noticed; 0 or less: it is already late, so a turn later.</param>
/// <param name="AfterWorstReadingS">The same in seconds.</param>
/// <param name="LevelS">Seconds wings level, without the rolls.</param>
public sealed record RollOut(double AfterWorstReadingDeg, double AfterWorstReadingS, double LevelS)
{
    /// <summary>The same beginning, wings level so long that the circle's centre moves this far.</summary>
    public RollOut Moving(double metres, Circle circle) => this with { LevelS = CentreShift.LevelSFor(circle, metres) };

    /// <summary>How far it moves the circle's centre, m: the straight stretch with half of each roll.</summary>
    public double ShiftM(Circle circle) => CentreShift.StraightenClosedForm(circle, LevelS);

    /// <summary>Further turn while the wings are rolled level.</summary>
    public static double HalfRollDeg(Circle circle) => circle.RateDegS * CentreShift.HalfRollS(circle);

    /// <summary>The closed form for a circle, an instrument and a distance of the circle's centre from the core.</summary>
    /// <remarks>
    /// At the true worst point the core lies across the circle's centre, so the heading for it comes 90° of turn later. The
    /// weakest reading comes later than the worst point by the lag's phase and the display's delay; during the roll-out the
    /// glider turns on through half of what it would have turned. So 90° − lag − delay − half a roll. [FAA-13A] gives about 60°
    /// after the weakest reading without saying for which instrument.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">Offset negative.</exception>
    public static RollOut ClosedForm(Circle circle, Variometer instrument, double offsetM)
    {
        ArgumentNullException.ThrowIfNull(circle);
        ArgumentNullException.ThrowIfNull(instrument);
        ArgumentOutOfRangeException.ThrowIfNegative(offsetM);
        var late = instrument.LagDeg(circle.PeriodS) + (circle.RateDegS * (instrument.DisplayDelayS + CentreShift.HalfRollS(circle)));
        var degrees = 90 - late;
        return new(degrees, degrees / circle.RateDegS, CentreShift.LevelSFor(circle, offsetM));
    }
}
