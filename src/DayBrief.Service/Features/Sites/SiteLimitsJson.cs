using DayBrief.Days;
using DayBrief.Service.Infrastructure;
using DayBrief.Units;

namespace DayBrief.Service.Features.Sites;

/// <summary>The site's own limits as the outside contract names them. Null where it sets none.</summary>
public sealed record SiteLimitsJson
{
    public double? WindKt { get; init; }

    public double? GustKt { get; init; }

    public CrosswindLimitsJson? CrosswindKt { get; init; }

    /// <summary>Height above sea level to which the airspace lets gliders climb.</summary>
    public double? CeilingM { get; init; }

    public string? CeilingNote { get; init; }

    internal static SiteLimitsJson? Of(SiteLimits limits)
    {
        var json = new SiteLimitsJson
        {
            WindKt = Json.Rounded(limits.Wind?.Knots, 2),
            GustKt = Json.Rounded(limits.Gust?.Knots, 2),
            CrosswindKt = CrosswindLimitsJson.Of(limits.Crosswind),
            CeilingM = limits.Ceiling?.Metres,
            CeilingNote = limits.CeilingNote,
        };
        return json == new SiteLimitsJson() ? null : json;
    }

    internal SiteLimits ToLimits(FieldErrors errors)
    {
        errors.Length("limits.ceilingNote", CeilingNote, 200);
        return new()
        {
            Wind = Knots(errors, "limits.windKt", WindKt),
            Gust = Knots(errors, "limits.gustKt", GustKt),
            Crosswind = new()
            {
                BeforeSolo = Knots(errors, "limits.crosswindKt.beforeSolo", CrosswindKt?.BeforeSolo),
                LocalSolo = Knots(errors, "limits.crosswindKt.localSolo", CrosswindKt?.LocalSolo),
                CrossCountry = Knots(errors, "limits.crosswindKt.crossCountry", CrosswindKt?.CrossCountry),
            },
            Ceiling = errors.Optional("limits.ceilingM", CeilingM) is { } metres ? Altitude.FromMetres(metres) : null,
            CeilingNote = CeilingNote,
        };
    }

    private static Speed? Knots(FieldErrors errors, string field, double? value) =>
        errors.Optional(field, value) is { } knots ? Speed.FromKnots(knots) : null;
}

/// <summary>Greatest wind across the runway by experience.</summary>
public sealed record CrosswindLimitsJson(double? BeforeSolo = null, double? LocalSolo = null, double? CrossCountry = null)
{
    internal static CrosswindLimitsJson? Of(CrosswindLimits limits)
    {
        var json = new CrosswindLimitsJson(
            Json.Rounded(limits.BeforeSolo?.Knots, 2), Json.Rounded(limits.LocalSolo?.Knots, 2), Json.Rounded(limits.CrossCountry?.Knots, 2));
        return json == new CrosswindLimitsJson() ? null : json;
    }
}
