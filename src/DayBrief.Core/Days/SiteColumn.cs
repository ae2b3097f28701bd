using DayBrief.BoundaryLayer;
using DayBrief.Soundings;
using DayBrief.Thermodynamics;
using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>The ascent brought to the ground of the site.</summary>
internal sealed class SiteColumn
{
    /// <summary>Differences in height beyond this are told.</summary>
    private const double WorthSayingM = 60;

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
    /// <remarks>Heights as <see cref="GroundShift"/> has them, at the site's own pressure: a site little higher or lower takes the
    /// ascent as it is, from the ground up; a much higher one cuts it; a much lower one gets air of the lowest level's
    /// temperature below it (isothermal, as on a clear night in a valley), and all between. Dew points missing aloft: the lowest known spread to the next is
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

        if (Math.Abs(rise) > WorthSayingM)
            cautions.Add(Moved(rise));
        var surfaceHpa = HpaAt(points, rise);
        points = Over(points, new(rise));
        return new(
            new Column([.. points.Select(p => p.Z)], [.. points.Select(p => p.Theta)], [.. points.Select(p => p.Q)]),
            surfaceHpa,
            points[0].Theta * Math.Pow(surfaceHpa / 1000, Air.Kappa),
            rise,
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

    /// <summary>The levels by their height over the site, from its ground up.</summary>
    private static List<Point> Over(List<Point> points, GroundShift shift)
    {
        if (shift.RiseM == 0)
            return points;
        var ground = At(points, shift.GroundM) with { Z = 0 };
        return [ground, .. points.Select(point => point with { Z = shift.Over(point.Z) }).Where(point => point.Z > 0)];
    }

    /// <summary>The air at a height of the ascent; below its lowest level equally warm and moist.</summary>
    private static Point At(List<Point> points, double z)
    {
        var above = points.FindIndex(point => point.Z > z);
        if (above <= 0)
            return points[0] with { Z = z, Hpa = HpaAt(points, z) };
        var (low, high) = (points[above - 1], points[above]);
        var share = (z - low.Z) / (high.Z - low.Z);
        return new(z, HpaAt(points, z), low.Kelvins + (share * (high.Kelvins - low.Kelvins)), low.Q + (share * (high.Q - low.Q)));
    }

    private static double HpaAt(List<Point> points, double z)
    {
        var above = points.FindIndex(point => point.Z > z);
        if (above <= 0)
            return points[0].Hpa * Math.Exp(-Air.Gravity * z / (Air.GasConstant * points[0].Kelvins));
        var (low, high) = (points[above - 1], points[above]);
        return low.Hpa * Math.Pow(high.Hpa / low.Hpa, (z - low.Z) / (high.Z - low.Z));
    }

    private readonly record struct Point(double Z, double Hpa, double Kelvins, double Q)
    {
        public double Theta => DryAdiabat.PotentialKelvins(Kelvins, Hpa);
    }
}
