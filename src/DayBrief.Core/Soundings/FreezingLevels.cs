using DayBrief.Units;

namespace DayBrief.Soundings;

/// <summary>Heights at which an ascent passes 0 °C.</summary>
public static class FreezingLevels
{
    /// <summary>Every crossing of 0 °C above the surface level, lowest first.</summary>
    /// <remarks>[AMS] "freezing level": the lowest altitude at which the air is at 0 °C. Linear in ln p.</remarks>
    public static IReadOnlyList<Height> Of(Profile profile)
    {
        var found = new List<Height>();
        for (var i = 1; i < profile.Hpa.Length; i++)
        {
            var below = profile.Kelvins[i - 1] - Temperature.ZeroCelsius;
            var above = profile.Kelvins[i] - Temperature.ZeroCelsius;
            if (below > 0 == above > 0)
                continue;
            var share = below / (below - above);
            var (low, high) = (profile.HeightAglM[i - 1], profile.HeightAglM[i]);
            found.Add(Height.FromMetres(low + (share * (high - low))));
        }

        return found;
    }

    /// <summary>The lowest height above which it stays below 0 °C: what a pilot means by the freezing level.</summary>
    /// <remarks>Not the first crossing of [AMS]: on a frosty morning that is the top of the cold air on the ground, with warm
    /// air above it. Zero height where it freezes all the way up; null where the ascent ends above 0 °C.</remarks>
    public static Height? Lasting(Profile profile)
    {
        var kelvins = profile.Kelvins;
        return kelvins[^1] > Temperature.ZeroCelsius ? null : Of(profile) is [.., var last] ? last : Height.FromMetres(0);
    }
}
