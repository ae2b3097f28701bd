using DayBrief.Units;

namespace DayBrief.Flight.Gliders;

/// <summary>Sink against speed in straight flight: w = a·V² + b·V + c with V and w in m/s.</summary>
/// <remarks>The usual quadratic through three measured points; good between the lowest and the highest of them.</remarks>
public sealed record Polar
{
    private Polar(double a, double b, double c) => (A, B, C) = (a, b, c);

    /// <summary>Coefficient of V², s/m, above 0.</summary>
    public double A { get; }

    /// <summary>Coefficient of V, dimensionless, below 0.</summary>
    public double B { get; }

    /// <summary>Constant, m/s.</summary>
    public double C { get; }

    /// <summary>Speed of least sink, m/s.</summary>
    public double MinimumSinkSpeedMs => -B / (2 * A);

    /// <summary>Least sink, m/s.</summary>
    public double MinimumSinkMs => SinkMs(MinimumSinkSpeedMs);

    /// <summary>Speed of best glide in still air, m/s: √(c/a).</summary>
    public double BestGlideSpeedMs => Math.Sqrt(C / A);

    /// <summary>Best glide ratio in still air.</summary>
    public double BestGlideRatio => BestGlideSpeedMs / SinkMs(BestGlideSpeedMs);

    /// <summary>Speed of least sink.</summary>
    public Speed MinimumSinkSpeed => Speed.FromMetresPerSecond(MinimumSinkSpeedMs);

    /// <summary>Through three points of a handbook's or a pilot's polar; sinks positive downwards.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Speeds equal or not above 0, or points through which no polar passes:
    /// one with sink that is least at a speed above 0 and positive there.</exception>
    public static Polar Through((Speed Speed, Speed Sink) first, (Speed Speed, Speed Sink) second, (Speed Speed, Speed Sink) third)
    {
        var (x1, x2, x3) = (Positive(first), Positive(second), Positive(third));
        var (y1, y2, y3) = (first.Sink.MetresPerSecond, second.Sink.MetresPerSecond, third.Sink.MetresPerSecond);
        if (x1 == x2 || x2 == x3 || x1 == x3)
            throw new ArgumentOutOfRangeException(nameof(second), "Three different speeds are needed.");
        var slope = (y2 - y1) / (x2 - x1);
        var a = (((y3 - y2) / (x3 - x2)) - slope) / (x3 - x1);
        return From(a, slope - (a * (x1 + x2)), y1 - (slope * x1) + (a * x1 * x2));
    }

    /// <summary>Sink in straight flight, m/s.</summary>
    internal double SinkMs(double speedMs) => (((A * speedMs) + B) * speedMs) + C;

    /// <summary>Sink in a turn, m/s: n^{3/2}·w(V/√n), because the wing flies at load factor n.</summary>
    internal double SinkMs(double speedMs, double loadFactor)
    {
        var root = Math.Sqrt(loadFactor);
        return loadFactor * root * SinkMs(speedMs / root);
    }

    /// <summary>The polar of the same glider heavier by a ratio of weights: all speeds and sinks times its square root [FAA-13A].</summary>
    internal Polar Heavier(double ratio) => From(A / Math.Sqrt(ratio), B, C * Math.Sqrt(ratio));

    private static Polar From(double a, double b, double c)
    {
        if (!(a > 0 && b < 0 && c - (b * b / (4 * a)) > 0))
            throw new ArgumentOutOfRangeException(nameof(a), "No polar passes through these points: sink must have a least value above 0.");
        return new(a, b, c);
    }

    private static double Positive((Speed Speed, Speed Sink) point) =>
        Guard.Finite(point.Speed.MetresPerSecond, 5, 120, nameof(point));
}
