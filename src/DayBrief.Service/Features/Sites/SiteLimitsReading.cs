using DayBrief.Days;
using DayBrief.Service.Infrastructure;
using DayBrief.Units;

namespace DayBrief.Service.Features.Sites;

/// <summary>The site's limits from SITE.json, which names wind and gusts in two places: the stricter holds.</summary>
internal static class SiteLimitsReading
{
    public static SiteLimits Of(SiteJson json, FieldErrors errors)
    {
        var inner = (json.Limits ?? new()).ToLimits(errors);
        var anybody = Knots(errors, "crosswindLimitKt", json.CrosswindLimitKt);
        return inner with
        {
            Wind = Least(Knots(errors, "windLimitKt", json.WindLimitKt), inner.Wind),
            Gust = Least(Knots(errors, "gustLimitKt", json.GustLimitKt), inner.Gust),
            Crosswind = new()
            {
                Anybody = anybody,
                BeforeSolo = Least(anybody, inner.Crosswind.BeforeSolo),
                LocalSolo = Least(anybody, inner.Crosswind.LocalSolo),
                CrossCountry = Least(anybody, inner.Crosswind.CrossCountry),
            },
            LeastVisibilityM = errors.Optional("leastVisibilityM", json.LeastVisibilityM),
            LeastCloudCeiling = errors.Optional("leastCeilingM", json.LeastCeilingM) is { } metres ? Height.FromMetres(metres) : null,
            Circling = Circling(json, errors),
        };
    }

    /// <summary>The smaller of what is known.</summary>
    public static double? Least(double? one, double? other) => one is null || other < one ? other : one;

    private static Speed? Least(Speed? one, Speed? other) => one is null || other < one ? other : one;

    private static CirclingLimits Circling(SiteJson json, FieldErrors errors) => new()
    {
        LeastHeight = (json.LeastCirclingHeightM ?? new()).To(errors, "leastCirclingHeightM", Height.FromMetres),
        SteepestBankDegrees = (json.SteepestBankDeg ?? new()).To(errors, "steepestBankDeg", degrees => degrees),
        LowMarginPct = errors.Optional("lowStallMarginPct", json.LowStallMarginPct),
        LowBelow = errors.Optional("lowBelowM", json.LowBelowM) is { } metres ? Height.FromMetres(metres) : null,
    };

    private static Speed? Knots(FieldErrors errors, string field, double? value) =>
        errors.Optional(field, value) is { } knots ? Speed.FromKnots(knots) : null;
}
