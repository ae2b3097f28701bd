using DayBrief.Flight.Gliders;
using DayBrief.Flight.Instruments;
using DayBrief.Flight.Thermals;

namespace DayBrief.Flight.Centring;

/// <summary>What the swing of the reading round the circle tells about the distance from the core, and the move that fits.</summary>
public sealed class SwingTable
{
    private const int Points = 72;

    private SwingTable(IReadOnlyList<SwingRow> rows) => Rows = rows;

    /// <summary>Rows by distance of the circle's centre from the core, until the swing no longer grows.</summary>
    public IReadOnlyList<SwingRow> Rows { get; }

    /// <summary>The table for a thermal at its height, a circle and an instrument: in steps of a tenth of the updraft radius.</summary>
    /// <param name="thermal">The thermal.</param>
    /// <param name="circle">The circle.</param>
    /// <param name="instrument">The instrument.</param>
    /// <param name="steepestBankDeg">Nothing is tightened beyond it, degrees.</param>
    public static SwingTable For(Thermal thermal, Circle circle, Variometer instrument, double steepestBankDeg = 65)
    {
        ArgumentNullException.ThrowIfNull(thermal);
        ArgumentNullException.ThrowIfNull(circle);
        ArgumentNullException.ThrowIfNull(instrument);
        var updraft = thermal.At(thermal.Height);
        var rows = new List<SwingRow>();
        for (var step = 0; step <= 15; step++)
        {
            var row = Row(updraft, circle, instrument, 0.1 * step * thermal.RadiusM, steepestBankDeg);
            if (rows.Count > 0 && row.SwingMs <= rows[^1].SwingMs)
                break;
            rows.Add(row);
        }

        return new(rows);
    }

    /// <summary>Distance from the core that a swing tells, m, between rows on a straight line; the last row's beyond it.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative swing.</exception>
    public double OffsetM(double swingMs)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(swingMs);
        for (var row = 1; row < Rows.Count; row++)
        {
            var (below, above) = (Rows[row - 1], Rows[row]);
            if (swingMs < above.SwingMs)
                return below.OffsetM + ((above.OffsetM - below.OffsetM) * Math.Max(0, swingMs - below.SwingMs) / (above.SwingMs - below.SwingMs));
        }

        return Rows[^1].OffsetM;
    }

    /// <summary>Swing at a distance from the core, m/s; the last row's beyond it.</summary>
    internal double SwingMs(double offsetM)
    {
        for (var row = 1; row < Rows.Count; row++)
        {
            var (below, above) = (Rows[row - 1], Rows[row]);
            if (offsetM < above.OffsetM)
                return below.SwingMs + ((above.SwingMs - below.SwingMs) * (offsetM - below.OffsetM) / (above.OffsetM - below.OffsetM));
        }

        return Rows[^1].SwingMs;
    }

    /// <summary>Mean climb round a circle whose centre lies off the axis, m/s.</summary>
    internal static double MeanClimbMs(LiftSection updraft, Circle circle, double offsetM) =>
        Enumerable.Range(0, Points).Average(point => updraft.UpdraftMs(Distance(circle, offsetM, point))) - circle.SinkMs;

    private static SwingRow Row(LiftSection updraft, Circle circle, Variometer instrument, double offsetM, double steepestBankDeg)
    {
        var passed = instrument.LagS > 0 ? Math.Exp(-circle.PeriodS / Points / instrument.LagS) : 0;
        var (reading, best, worst) = (0.0, double.MinValue, double.MaxValue);

        // the last of four turns: what the start left has then faded below any digit shown
        for (var point = 0; point < 4 * Points; point++)
        {
            reading = (passed * reading) + ((1 - passed) * (updraft.UpdraftMs(Distance(circle, offsetM, point)) - circle.SinkMs));
            if (point >= 3 * Points)
                (best, worst) = (Math.Max(best, reading), Math.Min(worst, reading));
        }

        var levelS = CentreShift.LevelSFor(circle, offsetM);
        var climb = MeanClimbMs(updraft, circle, offsetM);
        return new(offsetM, best, worst, climb, levelS > 0 ? levelS : null, Shallow(circle, offsetM), Tighten(circle, offsetM, steepestBankDeg));
    }

    /// <summary>The seconds, if the two half rolls leave any, for which <see cref="SwingRow.ShallowByDeg"/> less bank does it.</summary>
    private static double? Shallow(Circle circle, double offsetM) =>
        circle.BankDeg - SwingRow.ShallowByDeg >= 5
        && CentreShift.ShallowSFor(circle, SwingRow.ShallowByDeg, offsetM) is { } seconds
        && seconds >= SwingRow.ShallowByDeg / circle.Glider.RollRateDegS
            ? seconds
            : null;

    /// <summary>The extra bank, to 10°, that moves the centre so far if held 450° and eased over half a turn; null if it cannot.</summary>
    private static double? Tighten(Circle circle, double offsetM, double steepestBankDeg)
    {
        var degrees = Enumerable.Range(0, 21).Select(half => 0.5 * half).Where(each => circle.BankDeg + each <= steepestBankDeg)
            .Cast<double?>().FirstOrDefault(each => CentreShift.TightenClosedForm(circle, each!.Value, 450) >= offsetM);
        return degrees;
    }

    private static double Distance(Circle circle, double offsetM, int point)
    {
        var angle = 2 * Math.PI * point / Points;
        var x = offsetM + (circle.RadiusM * Math.Cos(angle));
        var y = circle.RadiusM * Math.Sin(angle);
        return Math.Sqrt((x * x) + (y * y));
    }
}

/// <summary>One line of the swing table.</summary>
/// <param name="OffsetM">Distance of the circle's centre from the core, m.</param>
/// <param name="StrongestMs">Strongest reading round the circle, m/s.</param>
/// <param name="WeakestMs">Weakest reading round the circle, m/s.</param>
/// <param name="MeanClimbMs">Mean climb on that circle, m/s.</param>
/// <param name="LevelS">Seconds wings level that move the centre onto the core; null where the two rolls alone move it further.</param>
/// <param name="ShallowS">Seconds, from the middle of one roll to the middle of the other, with <see cref="ShallowByDeg"/> less bank
/// that move it there; null where the rolls alone move it further or no time does.</param>
/// <param name="TightenDeg">Degrees more bank from the best point, held through 450° and eased over half a turn, that move it
/// there; null where 10°, or what the limits leave of them, are not enough.</param>
public sealed record SwingRow(
    double OffsetM, double StrongestMs, double WeakestMs, double MeanClimbMs, double? LevelS, double? ShallowS, double? TightenDeg)
{
    /// <summary>Bank taken off by the move between tightening and straightening, degrees.</summary>
    public const double ShallowByDeg = 15;

    /// <summary>Strongest less weakest reading, m/s.</summary>
    public double SwingMs => StrongestMs - WeakestMs;
}
