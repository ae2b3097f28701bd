using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>Limits that the site sets itself. Null where it sets none; whoever is in charge may set tighter ones.</summary>
public sealed record SiteLimits
{
    /// <summary>Wind at the ground above which the site does not launch.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative.</exception>
    public Speed? Wind
    {
        get;
        init => field = NotNegative(value);
    }

    /// <summary>Gusts above which the site does not launch.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative.</exception>
    public Speed? Gust
    {
        get;
        init => field = NotNegative(value);
    }

    /// <summary>Wind across the runway, by the pilot's experience.</summary>
    public CrosswindLimits Crosswind { get; init; } = new();

    /// <summary>How low and how steep anybody is advised to circle.</summary>
    public CirclingLimits Circling { get; init; } = new();

    /// <summary>Visibility below which the site does not launch, m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 50 000 m.</exception>
    public double? LeastVisibilityM
    {
        get;
        init => field = value is { } known ? Guard.Finite(known, 0, 50_000) : null;
    }

    /// <summary>Base above the field of the lowest cloud that covers more than half of the sky, below which the site does not launch.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 5000 m.</exception>
    public Height? LeastCloudCeiling
    {
        get;
        init => field = value is { } known ? Height.FromMetres(Guard.Finite(known.Metres, 0, 5000)) : null;
    }

    /// <summary>Height above sea level to which the airspace lets gliders climb here, as the site states it.</summary>
    public Altitude? Ceiling { get; init; }

    /// <summary>What the site says about that ceiling, such as when it is lower.</summary>
    public string? CeilingNote { get; init; }

    internal static Speed? NotNegative(Speed? limit) =>
        limit is { } known ? Speed.FromMetresPerSecond(Guard.Finite(known.MetresPerSecond, min: 0)) : null;
}

/// <summary>Greatest wind across the runway by experience; null where the site sets none.</summary>
public sealed record CrosswindLimits
{
    /// <summary>For everybody; the groups' own hold where they are less.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative.</exception>
    public Speed? Anybody
    {
        get;
        init => field = SiteLimits.NotNegative(value);
    }

    /// <summary>For pilots before their first solo (with an instructor).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative.</exception>
    public Speed? BeforeSolo
    {
        get;
        init => field = SiteLimits.NotNegative(value);
    }

    /// <summary>For solo pilots near the field.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative.</exception>
    public Speed? LocalSolo
    {
        get;
        init => field = SiteLimits.NotNegative(value);
    }

    /// <summary>For cross-country pilots.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative.</exception>
    public Speed? CrossCountry
    {
        get;
        init => field = SiteLimits.NotNegative(value);
    }
}
