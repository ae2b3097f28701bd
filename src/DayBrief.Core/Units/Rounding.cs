namespace DayBrief.Units;

/// <summary>How every figure is rounded before somebody reads it: the one rule for pages, sheets, drawings and sentences.</summary>
/// <remarks>How fine a figure is shown is a choice: no forecast height is known better than 100 ft. A limit is never rounded to
/// the side on which it would allow more. Nothing is ever "minus nought".</remarks>
/// <param name="Metric">Metres, kilometres and km/h, climbs in m/s; else feet, nautical miles and knots.</param>
public readonly record struct Rounding(bool Metric)
{
    private const double MetresPerFoot = 0.3048;
    private const double MetresPerNauticalMile = 1852;

    /// <summary>A stored limit is a whole number of metres or nearly so: this much of it, in metres, is not its own.</summary>
    private const double StoredWithinM = 0.5;

    /// <summary>Unit of heights and lengths.</summary>
    public string HeightUnit => Metric ? "m" : "ft";

    /// <summary>Unit of distances over the ground.</summary>
    public string DistanceUnit => Metric ? "km" : "NM";

    /// <summary>Unit of wind and airspeed.</summary>
    public string SpeedUnit => Metric ? "km/h" : "kt";

    /// <summary>Unit of climb and sink.</summary>
    public string VerticalUnit => Metric ? "m/s" : "kt";

    /// <summary>Step of heights.</summary>
    public double HeightStep => Metric ? 50 : 100;

    /// <summary>A height of thermals, clouds or air, to 50 m or 100 ft.</summary>
    public double Height(double metres) => To(InHeightUnit(metres), HeightStep);

    /// <summary>A height that nobody may pass upwards, down to 10 m or 10 ft.</summary>
    public double Ceiling(double metres) => Clean(10 * Math.Floor((InHeightUnit(metres) + InHeightUnit(StoredWithinM)) / 10));

    /// <summary>A height below which nobody may do something, up to 10 m or 10 ft.</summary>
    public double Floor(double metres) => Clean(10 * Math.Ceiling((InHeightUnit(metres) - InHeightUnit(StoredWithinM)) / 10));

    /// <summary>A length such as a radius, to 5 m or 10 ft.</summary>
    public double Length(double metres) => To(InHeightUnit(metres), Metric ? 5 : 10);

    /// <summary>A distance over the ground, to 0.1 km or 0.1 NM.</summary>
    public double Distance(double metres) => To(metres / (Metric ? 1000 : MetresPerNauticalMile), 0.1);

    /// <summary>Wind or airspeed, whole km/h or kt.</summary>
    public double Speed(double metresPerSecond) => To(Metric ? 3.6 * metresPerSecond : Knots(metresPerSecond), 1);

    /// <summary>A wind that nobody may pass, down to whole km/h or kt; a tenth of one may be lost where it is kept.</summary>
    public double SpeedLimit(double metresPerSecond) => Clean(Math.Floor(To(Metric ? 3.6 * metresPerSecond : Knots(metresPerSecond), 0.1) + 0.05));

    /// <summary>Climb or sink, to 0.1 m/s or 0.1 kt.</summary>
    public double Vertical(double metresPerSecond) => To(Metric ? metresPerSecond : Knots(metresPerSecond), 0.1);

    /// <summary>A temperature in whole degrees Celsius.</summary>
    public static double Celsius(double celsius) => To(celsius, 1);

    /// <summary>A direction to the nearest 5°, north as 360.</summary>
    public static int Direction(double degrees)
    {
        var fives = (int)To(degrees, 5) % 360;
        return fives <= 0 ? fives + 360 : fives;
    }

    /// <summary>A number to the nearest multiple of a step, halves away from nought.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not finite.</exception>
    public static double To(double value, double step)
    {
        // A tenth is no binary fraction: the last digit of the quotient must not decide, nor remain.
        var steps = Math.Round(Math.Round(Guard.Finite(value) / step, 9), MidpointRounding.AwayFromZero);
        return Clean(step >= 1 ? steps * step : steps / Math.Round(1 / step));
    }

    private static double Clean(double value) => value == 0 ? 0 : value;

    private static double Knots(double metresPerSecond) => Units.Speed.FromMetresPerSecond(metresPerSecond).Knots;

    private double InHeightUnit(double metres) => Metric ? metres : metres / MetresPerFoot;
}
