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
    /// <param name="groundM">Height of the site's ground above the ascent's lowest level, m.</param>
    public static LayerWind? Over(Sounding sounding, Profile profile, double groundM)
    {
        var byPressure = sounding.Levels
            .Where(level => level.Wind is not null && profile.HeightAt(level.Pressure) is not null)
            .Select(level => (profile.HeightAt(level.Pressure)!.Value.Metres - groundM, level.Wind!.Value));
        var station = profile.Elevation?.Metres ?? 0;
        var byHeight = sounding.WindsByHeight.Select(report => (report.Height.Metres - station - groundM, report.Wind));
        var reports = byPressure.Concat(byHeight)
            .Where(report => report.Item1 >= 0)
            .OrderBy(report => report.Item1)
            .DistinctBy(report => Math.Round(report.Item1))
            .Select(report => (report.Item1, report.Item2.EastwardMs, report.Item2.NorthwardMs))
            .ToImmutableArray();
        return reports.Length > 0 ? new(reports) : null;
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
