namespace DayBrief.Units;

/// <summary>Vertical distance above mean sea level. <c>default</c> is sea level.</summary>
public readonly record struct Altitude : IComparable<Altitude>
{
    private const double MetresPerFoot = 0.3048;

    private readonly double _metres;

    private Altitude(double metres) => _metres = metres;

    /// <summary>In metres.</summary>
    public double Metres => _metres;

    /// <summary>In feet (0.3048 m, exact [SI]).</summary>
    public double Feet => _metres / MetresPerFoot;

    /// <summary>From metres.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not finite.</exception>
    public static Altitude FromMetres(double value) => new(Guard.Finite(value));

    /// <summary>From feet.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not finite.</exception>
    public static Altitude FromFeet(double value) => new(Guard.Finite(value) * MetresPerFoot);

    /// <inheritdoc/>
    public int CompareTo(Altitude other) => _metres.CompareTo(other._metres);

    /// <summary>Lower than.</summary>
    public static bool operator <(Altitude left, Altitude right) => left._metres < right._metres;

    /// <summary>Higher than.</summary>
    public static bool operator >(Altitude left, Altitude right) => left._metres > right._metres;

    /// <summary>Lower than or level with.</summary>
    public static bool operator <=(Altitude left, Altitude right) => left._metres <= right._metres;

    /// <summary>Higher than or level with.</summary>
    public static bool operator >=(Altitude left, Altitude right) => left._metres >= right._metres;

    /// <summary>How far the left one stands above the right one.</summary>
    public static Height operator -(Altitude left, Altitude right) => Height.FromMetres(left._metres - right._metres);

    /// <summary>The altitude at a height above the ground of this altitude.</summary>
    public static Altitude operator +(Altitude ground, Height height) => new(ground._metres + height.Metres);
}
