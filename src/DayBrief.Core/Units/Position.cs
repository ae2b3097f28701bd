namespace DayBrief.Units;

/// <summary>A place on the globe. <c>default</c> is 0° N 0° E.</summary>
public readonly record struct Position
{
    private Position(double latitudeDegrees, double longitudeDegrees)
    {
        LatitudeDegrees = latitudeDegrees;
        LongitudeDegrees = longitudeDegrees;
    }

    /// <summary>North positive, −90 to 90°.</summary>
    public double LatitudeDegrees { get; }

    /// <summary>East positive, −180 to 180°.</summary>
    public double LongitudeDegrees { get; }

    /// <summary>From degrees north and east.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Off the globe.</exception>
    public static Position FromDegrees(double latitude, double longitude) =>
        new(Guard.Finite(latitude, -90, 90), Guard.Finite(longitude, -180, 180));

    /// <summary>Great-circle distance in kilometres on a sphere of the mean radius 6371.0088 km [IUGG].</summary>
    /// <remarks>[Sinnott1984] haversine form, good at small distances; within 0.6 % of the ellipsoid.</remarks>
    public double KilometresTo(Position other)
    {
        var lat1 = LatitudeDegrees * Math.PI / 180;
        var lat2 = other.LatitudeDegrees * Math.PI / 180;
        var sinLat = Math.Sin((lat2 - lat1) / 2);
        var sinLon = Math.Sin((other.LongitudeDegrees - LongitudeDegrees) * Math.PI / 360);
        var h = (sinLat * sinLat) + (Math.Cos(lat1) * Math.Cos(lat2) * sinLon * sinLon);
        return 2 * 6371.0088 * Math.Asin(Math.Min(1, Math.Sqrt(h)));
    }
}
