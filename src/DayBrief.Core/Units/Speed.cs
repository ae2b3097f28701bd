namespace DayBrief.Units;

/// <summary>Speed of air, glider or climb. <c>default</c> is none.</summary>
public readonly record struct Speed : IComparable<Speed>
{
    /// <summary>One knot in m/s: 1852 m in 3600 s, exact [SI].</summary>
    internal const double MetresPerSecondPerKnot = 1852.0 / 3600;

    private readonly double _metresPerSecond;

    private Speed(double metresPerSecond) => _metresPerSecond = metresPerSecond;

    /// <summary>In metres per second.</summary>
    public double MetresPerSecond => _metresPerSecond;

    /// <summary>In knots.</summary>
    public double Knots => _metresPerSecond / MetresPerSecondPerKnot;

    /// <summary>In kilometres per hour.</summary>
    public double KilometresPerHour => _metresPerSecond * 3.6;

    /// <summary>From metres per second.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not finite.</exception>
    public static Speed FromMetresPerSecond(double value) => new(Guard.Finite(value));

    /// <summary>From knots.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not finite.</exception>
    public static Speed FromKnots(double value) => new(Guard.Finite(value) * MetresPerSecondPerKnot);

    /// <summary>From kilometres per hour.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not finite.</exception>
    public static Speed FromKilometresPerHour(double value) => new(Guard.Finite(value) / 3.6);

    /// <inheritdoc/>
    public int CompareTo(Speed other) => _metresPerSecond.CompareTo(other._metresPerSecond);

    /// <summary>Slower than.</summary>
    public static bool operator <(Speed left, Speed right) => left._metresPerSecond < right._metresPerSecond;

    /// <summary>Faster than.</summary>
    public static bool operator >(Speed left, Speed right) => left._metresPerSecond > right._metresPerSecond;

    /// <summary>Slower than or as fast as.</summary>
    public static bool operator <=(Speed left, Speed right) => left._metresPerSecond <= right._metresPerSecond;

    /// <summary>Faster than or as fast as.</summary>
    public static bool operator >=(Speed left, Speed right) => left._metresPerSecond >= right._metresPerSecond;
}
