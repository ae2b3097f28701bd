namespace DayBrief.Units;

/// <summary>Vertical distance above the ground at the ascent or the field. <c>default</c> is the ground.</summary>
public readonly record struct Height : IComparable<Height>
{
    private const double MetresPerFoot = 0.3048;

    private readonly double _metres;

    private Height(double metres) => _metres = metres;

    /// <summary>In metres.</summary>
    public double Metres => _metres;

    /// <summary>In feet (0.3048 m, exact [SI]).</summary>
    public double Feet => _metres / MetresPerFoot;

    /// <summary>From metres.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not finite.</exception>
    public static Height FromMetres(double value) => new(Guard.Finite(value));

    /// <summary>From feet.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not finite.</exception>
    public static Height FromFeet(double value) => new(Guard.Finite(value) * MetresPerFoot);

    /// <inheritdoc/>
    public int CompareTo(Height other) => _metres.CompareTo(other._metres);

    /// <summary>Lower than.</summary>
    public static bool operator <(Height left, Height right) => left._metres < right._metres;

    /// <summary>Higher than.</summary>
    public static bool operator >(Height left, Height right) => left._metres > right._metres;

    /// <summary>Lower than or level with.</summary>
    public static bool operator <=(Height left, Height right) => left._metres <= right._metres;

    /// <summary>Higher than or level with.</summary>
    public static bool operator >=(Height left, Height right) => left._metres >= right._metres;
}
