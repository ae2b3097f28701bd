using DayBrief.BoundaryLayer;
using DayBrief.Soundings;
using DayBrief.Thermodynamics;
using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>The ascent brought to the ground of the site.</summary>
internal sealed class SiteColumn
{
    /// <summary>Differences in height up to this count as the same ground: the night inversion hugs it.</summary>
    private const double SameGroundM = 60;

    private const double TopM = 12_000;

    private SiteColumn(Column column, double surfaceHpa, double surfaceKelvins, double groundM, bool moist)
    {
        (Column, SurfaceHpa, SurfaceKelvins, GroundM, HasMoisture) = (column, surfaceHpa, surfaceKelvins, groundM, moist);
        ToSurface = Math.Pow(surfaceHpa / 1000, Air.Kappa);
    }

    public Column Column { get; }

    public double SurfaceHpa { get; }

    public double SurfaceKelvins { get; }

    /// <summary>Height of the site's ground above the ascent's lowest level, m.</summary>
    public double GroundM { get; }

    public bool HasMoisture { get; }

    /// <summary>Potential temperature times this is temperature at the ground.</summary>
    public double ToSurface { get; }

    /// <summary>The ascent over the site.</summary>
    /// <remarks>A site up to 60 m above or below the lowest level takes the ascent as it is, from the ground up, at its
    /// own pressure. A higher site cuts the ascent; a lower one gets air of the lowest level's temperature below it
    /// (isothermal, as on a clear night in a valley). Dew points missing aloft: the lowest known spread to the next is
    /// kept; missing altogether: dry air.</remarks>
    public static SiteColumn Of(Profile profile, Site site, List<Caution> cautions)
    {
        var rise = profile.Elevation is { } station ? (site.Elevation - station).Metres : 0;
        if (profile.Elevation is null)
            cautions.Add(new("station-height-unknown", Phrase.Of($"The ascent does not say how high its station lies; it is taken as level with the site.")));
        if (profile.MoistHpa.Length == 0)
            cautions.Add(new("no-dew-points", Phrase.Of($"The ascent has no dew points: cloud base, cover and moisture are not known.")));
        var points = Points(profile);
        if (rise > profile.Top.Metres - 500)
        {
            throw new InvalidSoundingException(new Refusal(
                "site-above-ascent", $"The site lies {rise:0} m above the station, too near the top of the ascent. Take another ascent."));
        }

        if (Math.Abs(rise) > SameGroundM)
        {
            cautions.Add(Moved(rise));
            points = rise > 0 ? Cut(points, rise) : Lowered(points, -rise);
        }

        var surfaceHpa = Math.Abs(rise) > SameGroundM
            ? points[0].Hpa
            : points[0].Hpa * Math.Exp(-Air.Gravity * rise / (Air.GasConstant * points[0].Kelvins));
        return new(
            new Column([.. points.Select(p => p.Z)], [.. points.Select(p => p.Theta)], [.. points.Select(p => p.Q)]),
            surfaceHpa,
            points[0].Kelvins * Math.Pow(surfaceHpa / points[0].Hpa, Air.Kappa),
            Math.Abs(rise) > SameGroundM ? rise : 0,
            profile.MoistHpa.Length > 0);
    }

    private static Caution Moved(double rise) => rise > 0
        ? new("site-above-station", Phrase.Of($"The site lies {Height.FromMetres(rise)} above the lowest level of the ascent, which is cut there; its own cold air of the night is not known."))
        : new("site-below-station", Phrase.Of($"The site lies {Height.FromMetres(-rise)} below the lowest level of the ascent; the air below that level is taken as equally warm."));

    private static List<Point> Points(Profile profile)
    {
        var points = new List<Point>();
        for (var i = 0; i < profile.Hpa.Length && profile.HeightAglM[i] <= TopM; i++)
        {
            var (hpa, kelvins) = (profile.Hpa[i], profile.Kelvins[i]);
            points.Add(new(profile.HeightAglM[i], hpa, kelvins, MixingRatioAt(profile, hpa, kelvins)));
        }

        return points;
    }

    private static double MixingRatioAt(Profile profile, double hpa, double kelvins)
    {
        if (profile.MoistHpa.Length == 0)
            return 0;
        var known = Math.Clamp(hpa, profile.MoistHpa[^1], profile.MoistHpa[0]);
        var spread = profile.KelvinsAt(known) - Temperature.ZeroCelsius - profile.DewPointCelsiusAt(known);
        return Humidity.MixingRatioKgKg(kelvins - Temperature.ZeroCelsius - Math.Max(0, spread), hpa);
    }

    private static List<Point> Cut(List<Point> points, double rise)
    {
        var above = points.FindIndex(point => point.Z > rise);
        var (low, high) = (points[above - 1], points[above]);
        var share = (rise - low.Z) / (high.Z - low.Z);
        var ground = new Point(
            0,
            low.Hpa * Math.Pow(high.Hpa / low.Hpa, share),
            low.Kelvins + (share * (high.Kelvins - low.Kelvins)),
            low.Q + (share * (high.Q - low.Q)));
        return [ground, .. points[above..].Select(point => point with { Z = point.Z - rise })];
    }

    private static List<Point> Lowered(List<Point> points, double fall)
    {
        var lowest = points[0];
        var hpa = lowest.Hpa * Math.Exp(Air.Gravity * fall / (Air.GasConstant * lowest.Kelvins));
        return [new(0, hpa, lowest.Kelvins, lowest.Q), .. points.Select(point => point with { Z = point.Z + fall })];
    }

    private readonly record struct Point(double Z, double Hpa, double Kelvins, double Q)
    {
        public double Theta => DryAdiabat.PotentialKelvins(Kelvins, Hpa);
    }
}
