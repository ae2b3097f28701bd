using DayBrief.Reports;

namespace DayBrief.Days;

/// <summary>A part of daylight in which a forecast says one thing.</summary>
/// <param name="Group">The group that says it.</param>
/// <param name="Conditions">What holds: of a group that becomes, also what it does not change.</param>
/// <param name="From">From when.</param>
/// <param name="To">Until when.</param>
internal readonly record struct ForecastPart(ForecastGroup Group, AerodromeConditions Conditions, DateTimeOffset From, DateTimeOffset To)
{
    /// <summary>Harm and chance of something of that harm: of what is only probable the chance is less.</summary>
    public Risk RiskOf(Harm harm) => new(harm, Group.ProbabilityPercent is null ? Chance.Likely : Chance.Possible);
}

/// <summary>When each group of an aerodrome forecast holds in daylight, and what holds then.</summary>
internal static class ForecastTimes
{
    /// <summary>The parts of a forecast in daylight.</summary>
    /// <remarks>[WMO306] FM 51: what holds at the beginning and what becomes holds until the next change that stays; a change
    /// that becomes leaves what it does not name; what is temporary or probable holds only within its own time. A change may come
    /// at any time of its period, so what it brings counts from its beginning and what it ends to its end.</remarks>
    public static IEnumerable<ForecastPart> Of(Brief brief)
    {
        if (brief.Forecast is not { } forecast || forecast.IsCancelled || forecast.IsNil)
            yield break;
        var noon = brief.Day.Sun.Noon;
        DateTimeOffset? At(DayTime? time) => time?.NearestTo(noon);
        var groups = forecast.Groups;
        var standing = new AerodromeConditions();
        for (var i = 0; i < groups.Length; i++)
        {
            var group = groups[i];
            var conditions = group.Kind == ForecastKind.Becoming ? Changed(standing, group.Conditions) : group.Conditions;
            standing = Stays(group) ? conditions : standing;
            var next = groups.Skip(i + 1).FirstOrDefault(Stays);
            var from = At(group.From) ?? At(forecast.From);
            var to = Stays(group)
                ? (next?.Kind == ForecastKind.Becoming ? At(next.To) : null) ?? At(next?.From) ?? At(forecast.To)
                : At(group.To) ?? At(forecast.To);
            if (Daylight.Clip(brief, from, to) is { } part)
                yield return new(group, conditions, part.From, part.To);
        }
    }

    private static AerodromeConditions Changed(AerodromeConditions before, AerodromeConditions change)
    {
        if (change.IsCavok)
            return change with { Wind = change.Wind ?? before.Wind };
        var sky = change.Clouds.Length > 0 || change.IsObscured;
        return change with
        {
            Wind = change.Wind ?? before.Wind,
            Visibility = change.Visibility ?? before.Visibility,
            Weather = change.Weather.Length > 0 || change.NoSignificantWeather ? change.Weather : before.Weather,
            Clouds = sky ? change.Clouds : before.Clouds,
            IsObscured = sky ? change.IsObscured : before.IsObscured,
            VerticalVisibility = sky ? change.VerticalVisibility : before.VerticalVisibility,
        };
    }

    private static bool Stays(ForecastGroup group) =>
        group.Kind is ForecastKind.Initial or ForecastKind.From or ForecastKind.Becoming;
}
