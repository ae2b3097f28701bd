using DayBrief.Units;

namespace DayBrief.BoundaryLayer;

/// <summary>Where the sun stands, seen from a place at an instant.</summary>
/// <param name="ElevationDegrees">Height of its centre above the horizon, without refraction, −90 to 90°.</param>
/// <param name="AzimuthDegrees">Direction, clockwise from north, 0 to 360°.</param>
/// <param name="DeclinationDegrees">Apparent declination.</param>
/// <param name="EquationOfTimeMinutes">Sundial time less mean time.</param>
public readonly record struct Sun(
    double ElevationDegrees, double AzimuthDegrees, double DeclinationDegrees, double EquationOfTimeMinutes)
{
    private const double Degrees = 180 / Math.PI;

    /// <summary>Cosine of the zenith angle: sine of the elevation.</summary>
    public double CosZenith => Math.Sin(ElevationDegrees / Degrees);

    /// <summary>Position of the sun.</summary>
    /// <remarks>[Meeus1998] chapters 25 (low accuracy) and 28, as NOAA's solar calculator uses them: 0.01° in longitude
    /// from 1900 to 2100. Dynamical and universal time are taken as one, which moves the sun by less than 0.001°.</remarks>
    /// <param name="place">The place.</param>
    /// <param name="at">The instant.</param>
    public static Sun At(Position place, DateTimeOffset at)
    {
        var (declination, equationOfTime) = Apparent(CenturiesSince2000(at));
        var minutesUtc = at.UtcDateTime.TimeOfDay.TotalMinutes;
        var hourAngle = ((minutesUtc + equationOfTime) / 4) + place.LongitudeDegrees - 180;
        var (sinLat, cosLat) = Math.SinCos(place.LatitudeDegrees / Degrees);
        var (sinDec, cosDec) = Math.SinCos(declination);
        var (sinHour, cosHour) = Math.SinCos(hourAngle / Degrees);
        var sinElevation = (sinLat * sinDec) + (cosLat * cosDec * cosHour);
        var azimuth = Math.Atan2(-sinHour * cosDec, (sinDec * cosLat) - (cosDec * sinLat * cosHour)) * Degrees;
        return new(
            Math.Asin(Math.Clamp(sinElevation, -1, 1)) * Degrees,
            (azimuth + 360) % 360,
            declination * Degrees,
            equationOfTime);
    }

    /// <summary>Julian centuries since 2000 January 1, 12 h.</summary>
    internal static double CenturiesSince2000(DateTimeOffset at) =>
        (at.UtcDateTime - new DateTime(2000, 1, 1, 12, 0, 0, DateTimeKind.Utc)).TotalDays / 36525;

    /// <summary>Apparent longitude of the sun, degrees.</summary>
    internal static double ApparentLongitude(double t)
    {
        var anomaly = Anomaly(t);
        var centre = ((1.914602 - (0.004817 * t) - (0.000014 * t * t)) * Math.Sin(anomaly))
            + ((0.019993 - (0.000101 * t)) * Math.Sin(2 * anomaly))
            + (0.000289 * Math.Sin(3 * anomaly));
        return MeanLongitude(t) + centre - 0.00569 - (0.00478 * Math.Sin(Node(t)));
    }

    /// <summary>Declination (radians) and equation of time (minutes).</summary>
    internal static (double DeclinationRadians, double EquationOfTimeMinutes) Apparent(double t)
    {
        var obliquity = (23.439291 - (0.0130042 * t) + (0.00256 * Math.Cos(Node(t)))) / Degrees;
        var longitude = ApparentLongitude(t) / Degrees;
        var anomaly = Anomaly(t);
        var mean = MeanLongitude(t) / Degrees;
        var eccentricity = 0.016708634 - (0.000042037 * t);
        var y = Math.Tan(obliquity / 2) * Math.Tan(obliquity / 2);
        var equation = (y * Math.Sin(2 * mean)) - (2 * eccentricity * Math.Sin(anomaly))
            + (4 * eccentricity * y * Math.Sin(anomaly) * Math.Cos(2 * mean))
            - (0.5 * y * y * Math.Sin(4 * mean))
            - (1.25 * eccentricity * eccentricity * Math.Sin(2 * anomaly));
        return (Math.Asin(Math.Sin(obliquity) * Math.Sin(longitude)), 4 * equation * Degrees);
    }

    private static double MeanLongitude(double t) => 280.46646 + (36000.76983 * t) + (0.0003032 * t * t);

    private static double Anomaly(double t) => (357.52911 + (35999.05029 * t) - (0.0001537 * t * t)) / Degrees;

    private static double Node(double t) => (125.04 - (1934.136 * t)) / Degrees;
}
