namespace DayBrief.Units;

/// <summary>Where the wind blows from and how fast. <c>default</c> is calm.</summary>
public readonly record struct Wind
{
    private Wind(double fromDegrees, Speed speed)
    {
        FromDegrees = fromDegrees;
        Speed = speed;
    }

    /// <summary>True direction it blows from, 0 to 360°; as reported (north may be 360).</summary>
    public double FromDegrees { get; }

    /// <summary>Its speed, never negative.</summary>
    public Speed Speed { get; }

    /// <summary>Component towards east, m/s.</summary>
    public double EastwardMs => -Speed.MetresPerSecond * Math.Sin(FromDegrees * Math.PI / 180);

    /// <summary>Component towards north, m/s.</summary>
    public double NorthwardMs => -Speed.MetresPerSecond * Math.Cos(FromDegrees * Math.PI / 180);

    /// <summary>From a true direction in degrees and a speed.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Direction outside 0–360° or speed negative.</exception>
    public static Wind From(double fromDegrees, Speed speed)
    {
        Guard.Finite(speed.MetresPerSecond, min: 0, name: nameof(speed));
        return new(Guard.Finite(fromDegrees, 0, 360), speed);
    }

    /// <summary>From its components towards east and north, m/s.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not finite.</exception>
    public static Wind FromComponents(double eastwardMs, double northwardMs)
    {
        var degrees = Math.Atan2(-Guard.Finite(eastwardMs), -Guard.Finite(northwardMs)) * 180 / Math.PI;
        return new(
            (degrees + 360) % 360,
            Speed.FromMetresPerSecond(Math.Sqrt((eastwardMs * eastwardMs) + (northwardMs * northwardMs))));
    }
}
