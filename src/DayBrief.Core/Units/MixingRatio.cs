namespace DayBrief.Units;

/// <summary>Mass of water vapour per mass of dry air. <c>default</c> is dry air.</summary>
public readonly record struct MixingRatio
{
    private readonly double _kgPerKg;

    private MixingRatio(double kgPerKg) => _kgPerKg = kgPerKg;

    /// <summary>In kg of vapour per kg of dry air.</summary>
    public double KilogramsPerKilogram => _kgPerKg;

    /// <summary>In g of vapour per kg of dry air.</summary>
    public double GramsPerKilogram => _kgPerKg * 1000;

    /// <summary>From kg/kg.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or not finite.</exception>
    public static MixingRatio FromKilogramsPerKilogram(double value) => new(Guard.Finite(value, min: 0));

    /// <summary>From g/kg.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or not finite.</exception>
    public static MixingRatio FromGramsPerKilogram(double value) => new(Guard.Finite(value, min: 0) / 1000);
}
