using DayBrief.Units;

namespace DayBrief.BoundaryLayer;

/// <summary>The sun's day at a place: its times in the local time of that date. Null is an event that does not come.</summary>
public sealed record SunDay
{
    private const double RiseDegrees = -0.833;
    private const double CivilDegrees = -6;

    /// <summary>The sun stands highest.</summary>
    public required DateTimeOffset Noon { get; init; }

    /// <summary>Its elevation then, degrees, without refraction.</summary>
    public required double NoonElevationDegrees { get; init; }

    /// <summary>The upper edge appears; null in polar day and night.</summary>
    public DateTimeOffset? Sunrise { get; init; }

    /// <summary>The upper edge disappears; null in polar day and night.</summary>
    public DateTimeOffset? Sunset { get; init; }

    /// <summary>Start of morning civil twilight: the sun 6° below the horizon.</summary>
    public DateTimeOffset? CivilDawn { get; init; }

    /// <summary>End of evening civil twilight: the sun 6° below the horizon.</summary>
    public DateTimeOffset? CivilDusk { get; init; }

    /// <summary>The sun stays up all day.</summary>
    public bool IsPolarDay => Sunrise is null && NoonElevationDegrees > RiseDegrees;

    /// <summary>The sun stays down all day.</summary>
    public bool IsPolarNight => NoonElevationDegrees <= RiseDegrees;

    /// <summary>The sun's day of a local date.</summary>
    /// <remarks>[Meeus1998] chapter 15 with the declination and the equation of time of the event itself (iterated);
    /// elevation −0.833°: 34′ of standard refraction and 16′ of the disc. Within 1 min to latitude 65°; nearer the pole
    /// the sun grazes the horizon and refraction decides. The place is taken as level with its horizon.</remarks>
    /// <param name="place">The place.</param>
    /// <param name="date">The date there.</param>
    /// <param name="zone">The place's time zone.</param>
    public static SunDay Of(Position place, DateOnly date, TimeZoneInfo zone)
    {
        var noon = NoonOf(place, date, zone);
        return new()
        {
            Noon = TimeZoneInfo.ConvertTime(noon, zone),
            NoonElevationDegrees = Sun.At(place, noon).ElevationDegrees,
            Sunrise = Event(place, noon, RiseDegrees, -1, zone),
            Sunset = Event(place, noon, RiseDegrees, 1, zone),
            CivilDawn = Event(place, noon, CivilDegrees, -1, zone),
            CivilDusk = Event(place, noon, CivilDegrees, 1, zone),
        };
    }

    /// <summary>The solar noon whose local date is the one asked for, whatever side of the date line the clock takes.</summary>
    private static DateTimeOffset NoonOf(Position place, DateOnly date, TimeZoneInfo zone)
    {
        var noon = Noon24(place, date);
        var local = DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(noon, zone).DateTime);
        return local == date ? noon : Noon24(place, date.AddDays(date.DayNumber - local.DayNumber));
    }

    private static DateTimeOffset Noon24(Position place, DateOnly date)
    {
        var midnight = new DateTimeOffset(date.ToDateTime(TimeOnly.MinValue), TimeSpan.Zero);
        var noon = midnight.AddMinutes(720 - (4 * place.LongitudeDegrees));
        var equation = Sun.Apparent(Sun.CenturiesSince2000(noon)).EquationOfTimeMinutes;
        return noon.AddMinutes(-equation);
    }

    private static DateTimeOffset? Event(
        Position place, DateTimeOffset noon, double elevationDegrees, int side, TimeZoneInfo zone)
    {
        var at = noon;
        var noonEquation = Sun.Apparent(Sun.CenturiesSince2000(noon)).EquationOfTimeMinutes;
        var (sinLat, cosLat) = Math.SinCos(place.LatitudeDegrees * Math.PI / 180);
        for (var i = 0; i < 6; i++)
        {
            var (declination, equation) = Sun.Apparent(Sun.CenturiesSince2000(at));
            var cosHour = (Math.Sin(elevationDegrees * Math.PI / 180) - (sinLat * Math.Sin(declination)))
                / (cosLat * Math.Cos(declination));
            if (!(Math.Abs(cosHour) <= 1))
                return null;
            at = noon.AddMinutes((side * 4 * Math.Acos(cosHour) * 180 / Math.PI) - (equation - noonEquation));
        }

        return TimeZoneInfo.ConvertTime(at, zone);
    }
}
