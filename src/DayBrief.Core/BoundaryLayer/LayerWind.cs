using System.Collections.Immutable;
using DayBrief.Soundings;
using DayBrief.Units;

namespace DayBrief.BoundaryLayer;

/// <summary>The winds of an ascent by height above the site, linear in their components between reports.</summary>
public sealed class LayerWind
{
    private readonly ImmutableArray<(double HeightM, double East, double North)> _reports;

    private LayerWind(ImmutableArray<(double HeightM, double East, double North)> reports) => _reports = reports;

    /// <summary>Height of the highest report.</summary>
    public Height Top => Height.FromMetres(_reports[^1].HeightM);

    /// <summary>Winds reported, by height above the site's ground.</summary>
    public IEnumerable<(Height Height, Wind Wind)> Reports =>
        _reports.Select(report => (Height.FromMetres(report.HeightM), Wind.FromComponents(report.East, report.North)));

    /// <summary>The winds over a site; null when the ascent reports none above its ground.</summary>
    /// <param name="sounding">The ascent.</param>
    /// <param name="profile">Its column.</param>
    /// <param name="groundM">Height of the site's ground above the ascent's lowest level, m. Where reports lie below that
    /// ground, the wind at the ground lies between the last of them and the first above.</param>
    public static LayerWind? Over(Sounding sounding, Profile profile, double groundM)
    {
        var byPressure = sounding.Levels
            .Where(level => level.Wind is not null && profile.HeightAt(level.Pressure) is not null)
            .Select(level => (profile.HeightAt(level.Pressure)!.Value.Metres, level.Wind!.Value));
        var station = profile.Elevation?.Metres ?? 0;
        var byHeight = sounding.WindsByHeight.Select(report => (report.Height.Metres - station, report.Wind));
        var shift = new GroundShift(groundM);
        (double HeightM, double East, double North)[] reports =
        [
            .. byPressure.Concat(byHeight)
                .OrderBy(report => report.Item1)
                .DistinctBy(report => Math.Round(report.Item1))
                .Select(report => (shift.Over(report.Item1), report.Item2.EastwardMs, report.Item2.NorthwardMs)),
        ];
        return Of(reports);
    }

    /// <summary>Winds by height, the lowest of them perhaps below the ground; null when none lies above it.</summary>
    private static LayerWind? Of((double HeightM, double East, double North)[] reports)
    {
        var first = Array.FindIndex(reports, report => report.HeightM >= 0);
        if (first < 0)
            return null;
        if (first == 0 || reports[first].HeightM == 0)
            return new([.. reports[first..]]);
        var (east, north) = new LayerWind([.. reports[(first - 1)..]]).Components(0);
        return new([(0, east, north), .. reports[first..]]);
    }

    /// <summary>Wind at a height; null above the highest report. Below the lowest one that holds.</summary>
    public Wind? At(Height height)
    {
        if (height.Metres > _reports[^1].HeightM)
            return null;
        var (east, north) = Components(height.Metres);
        return Wind.FromComponents(east, north);
    }

    /// <summary>Mean wind vector from the ground to a height (or the highest report below it).</summary>
    public Wind Mean(Height top)
    {
        var (east, north, count) = (0.0, 0.0, 20);
        for (var i = 0; i < count; i++)
        {
            var (u, v) = Components((i + 0.5) / count * Math.Min(top.Metres, _reports[^1].HeightM));
            (east, north) = (east + (u / count), north + (v / count));
        }

        return Wind.FromComponents(east, north);
    }

    /// <summary>Length of the wind's vector change between two heights; null above the highest report.</summary>
    public Speed? Change(Height from, Height to)
    {
        if (At(from) is not { } low || At(to) is not { } high)
            return null;
        var (east, north) = (high.EastwardMs - low.EastwardMs, high.NorthwardMs - low.NorthwardMs);
        return Speed.FromMetresPerSecond(Math.Sqrt((east * east) + (north * north)));
    }

    private (double East, double North) Components(double heightM)
    {
        var above = 0;
        while (above < _reports.Length && _reports[above].HeightM < heightM)
            above++;
        if (above == 0 || above == _reports.Length)
            return (_reports[Math.Min(above, _reports.Length - 1)].East, _reports[Math.Min(above, _reports.Length - 1)].North);
        var (low, high) = (_reports[above - 1], _reports[above]);
        var share = (heightM - low.HeightM) / Math.Max(1e-9, high.HeightM - low.HeightM);
        return (low.East + (share * (high.East - low.East)), low.North + (share * (high.North - low.North)));
    }
}
