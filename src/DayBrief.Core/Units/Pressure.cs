namespace DayBrief.Units;

/// <summary>Air pressure. <c>default</c> is 0 Pa, which no sounding accepts.</summary>
public readonly record struct Pressure : IComparable<Pressure>
{
    private readonly double _pascals;

    private Pressure(double pascals) => _pascals = pascals;

    /// <summary>The pressure in pascals.</summary>
    public double Pascals => _pascals;

    /// <summary>The pressure in hectopascals.</summary>
    public double Hectopascals => _pascals / 100;

    /// <summary>From hectopascals (the unit of soundings).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or not finite.</exception>
    public static Pressure FromHectopascals(double value) => new(100 * Guard.Finite(value, min: 0));

    /// <summary>From pascals.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or not finite.</exception>
    public static Pressure FromPascals(double value) => new(Guard.Finite(value, min: 0));

    /// <inheritdoc/>
    public int CompareTo(Pressure other) => _pascals.CompareTo(other._pascals);

    /// <summary>Lower pressure, that is higher up.</summary>
    public static bool operator <(Pressure left, Pressure right) => left._pascals < right._pascals;

    /// <summary>Higher pressure, that is lower down.</summary>
    public static bool operator >(Pressure left, Pressure right) => left._pascals > right._pascals;

    /// <summary>Lower or equal pressure.</summary>
    public static bool operator <=(Pressure left, Pressure right) => left._pascals <= right._pascals;

    /// <summary>Higher or equal pressure.</summary>
    public static bool operator >=(Pressure left, Pressure right) => left._pascals >= right._pascals;
}
