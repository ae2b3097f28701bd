using DayBrief.Units;

namespace DayBrief.Soundings;

/// <summary>The wind of one ascent by height above its surface level, from all winds it reports.</summary>
/// <remarks>Between reported winds the components towards east and north are linear in height. Winds given by pressure
/// get their height from the profile; winds given by height need the profile's elevation.</remarks>
public sealed class WindProfile
{
    private readonly (double HeightM, Wind Wind)[] _winds;

    private WindProfile((double HeightM, Wind Wind)[] winds) => _winds = winds;

    /// <summary>Heights at which a wind is reported, m above the surface level, rising.</summary>
    public IEnumerable<Height> ReportedAt => _winds.Select(wind => Height.FromMetres(wind.HeightM));

    /// <summary>The winds of an ascent.</summary>
    public static WindProfile Of(Sounding sounding, Profile profile)
    {
        var byPressure = sounding.Levels
            .Where(level => level.Wind is not null && profile.Inside(level.Pressure.Hectopascals))
            .Select(level => (profile.HeightAglMAt(level.Pressure.Hectopascals), level.Wind!.Value));
        var byHeight = profile.Elevation is { } ground
            ? sounding.WindsByHeight
                .Select(wind => ((wind.Height - ground).Metres, wind.Wind))
                .Where(wind => wind.Metres >= 0)
            : [];
        return new([.. byPressure.Concat(byHeight).OrderBy(wind => wind.Item1).DistinctBy(wind => Math.Round(wind.Item1))]);
    }

    /// <summary>The wind at a height above the surface level; null where the ascent reports none on both sides.</summary>
    public Wind? At(Height height)
    {
        var above = Array.FindIndex(_winds, wind => wind.HeightM >= height.Metres);
        if (above < 0)
            return null;
        if (_winds[above].HeightM == height.Metres || (above == 0 && _winds[0].HeightM - height.Metres <= 20))
            return _winds[above].Wind;
        if (above == 0)
            return null;
        var (low, high) = (_winds[above - 1], _winds[above]);
        var share = (height.Metres - low.HeightM) / (high.HeightM - low.HeightM);
        return Wind.FromComponents(
            low.Wind.EastwardMs + (share * (high.Wind.EastwardMs - low.Wind.EastwardMs)),
            low.Wind.NorthwardMs + (share * (high.Wind.NorthwardMs - low.Wind.NorthwardMs)));
    }
}
