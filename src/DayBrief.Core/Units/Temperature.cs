namespace DayBrief.Units;

/// <summary>A point on the temperature scale. <c>default</c> is absolute zero, which no sounding accepts.</summary>
public readonly record struct Temperature : IComparable<Temperature>
{
    /// <summary>0 °C in kelvin, exact by definition [SI].</summary>
    public const double ZeroCelsius = 273.15;

    private readonly double _kelvins;

    private Temperature(double kelvins) => _kelvins = kelvins;

    /// <summary>The temperature in kelvins.</summary>
    public double Kelvins => _kelvins;

    /// <summary>The temperature in degrees Celsius.</summary>
    public double Celsius => _kelvins - ZeroCelsius;

    /// <summary>From degrees Celsius.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below absolute zero or not finite.</exception>
    public static Temperature FromCelsius(double value) => new(Guard.Finite(value, min: -ZeroCelsius) + ZeroCelsius);

    /// <summary>From kelvins.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or not finite.</exception>
    public static Temperature FromKelvins(double value) => new(Guard.Finite(value, min: 0));

    /// <inheritdoc/>
    public int CompareTo(Temperature other) => _kelvins.CompareTo(other._kelvins);

    /// <summary>How much warmer the left one is.</summary>
    public static TemperatureDifference operator -(Temperature left, Temperature right) =>
        TemperatureDifference.FromKelvins(left._kelvins - right._kelvins);

    /// <summary>A temperature warmer by a difference.</summary>
    public static Temperature operator +(Temperature left, TemperatureDifference right) =>
        FromKelvins(left._kelvins + right.Kelvins);

    /// <summary>Colder than.</summary>
    public static bool operator <(Temperature left, Temperature right) => left._kelvins < right._kelvins;

    /// <summary>Warmer than.</summary>
    public static bool operator >(Temperature left, Temperature right) => left._kelvins > right._kelvins;

    /// <summary>Colder than or equal to.</summary>
    public static bool operator <=(Temperature left, Temperature right) => left._kelvins <= right._kelvins;

    /// <summary>Warmer than or equal to.</summary>
    public static bool operator >=(Temperature left, Temperature right) => left._kelvins >= right._kelvins;
}
