namespace DayBrief.Units;

/// <summary>A difference of two temperatures; one kelvin is one degree Celsius. <c>default</c> is none.</summary>
public readonly record struct TemperatureDifference
{
    private readonly double _kelvins;

    private TemperatureDifference(double kelvins) => _kelvins = kelvins;

    /// <summary>The difference in kelvins.</summary>
    public double Kelvins => _kelvins;

    /// <summary>From kelvins.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not finite.</exception>
    public static TemperatureDifference FromKelvins(double value) => new(Guard.Finite(value));
}
