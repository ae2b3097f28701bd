namespace DayBrief.Service.Features.Sites;

/// <summary>The fields of a site's page for its limits and for the air above it: there and back.</summary>
internal static class SiteLimitFields
{
    /// <summary>Field of the page, field of SITE.json, label, for each group.</summary>
    public static readonly (string Circling, string Bank, string Group)[] Groups =
    [
        ("circlingBeforeSolo", "bankBeforeSolo", "beforeSolo"),
        ("circlingLocalSolo", "bankLocalSolo", "localSolo"),
        ("circlingCrossCountry", "bankCrossCountry", "crossCountry"),
    ];

    public static void Put(SiteJson site, SiteUnitsTyped units, Dictionary<string, string?> values)
    {
        values["limitWind"] = units.Knots(SiteLimitsReading.Least(site.WindLimitKt, site.Limits?.WindKt));
        values["limitGust"] = units.Knots(SiteLimitsReading.Least(site.GustLimitKt, site.Limits?.GustKt));
        values["limitAnybody"] = units.Knots(site.CrosswindLimitKt);
        values["limitBeforeSolo"] = units.Knots(site.Limits?.CrosswindKt?.BeforeSolo);
        values["limitLocalSolo"] = units.Knots(site.Limits?.CrosswindKt?.LocalSolo);
        values["limitCrossCountry"] = units.Knots(site.Limits?.CrosswindKt?.CrossCountry);
        values["ceiling"] = units.Height(site.Limits?.CeilingM);
        values["ceilingNote"] = site.Limits?.CeilingNote;
        values["leastVisibility"] = SiteUnitsTyped.Number(site.LeastVisibilityM / 1000, 3);
        values["leastCeiling"] = units.Height(site.LeastCeilingM);
        foreach (var (circling, bank, group) in Groups)
        {
            values[circling] = units.Height(Of(site.LeastCirclingHeightM, group));
            values[bank] = SiteUnitsTyped.Number(Of(site.SteepestBankDeg, group), 0);
        }

        values["lowMargin"] = SiteUnitsTyped.Number(site.LowStallMarginPct, 0);
        values["lowBelow"] = units.Height(site.LowBelowM);
        values["sinking"] = SiteUnitsTyped.Number(site.SinkingPerS * SinkingUnits, 3);
        values["cooling"] = SiteUnitsTyped.Number(site.CoolingKPerH, 2);
        values["entrainment"] = SiteUnitsTyped.Number(site.Entrainment, 3);
    }

    /// <summary>The site with what the fields say; a figure goes back to where it stood.</summary>
    public static SiteJson Read(SiteJson site, SiteFields fields, SiteJson? before, TypedNumbers numbers)
    {
        var typed = fields.Typed;
        var wind = numbers.Of("limitWind", SiteLimitsReading.Least(before?.WindLimitKt, before?.Limits?.WindKt), typed.InKnots);
        var gust = numbers.Of("limitGust", SiteLimitsReading.Least(before?.GustLimitKt, before?.Limits?.GustKt), typed.InKnots);
        ByExperienceJson? Groups(Func<(string Circling, string Bank, string Group), string> field, ByExperienceJson? exact, Func<double, double> convert)
        {
            var figures = SiteLimitFields.Groups.Select(group => numbers.Of(field(group), Of(exact, group.Group), convert)).ToArray();
            return ByExperienceJson.NullIfEmpty(new(figures[0], figures[1], figures[2]));
        }

        return site with
        {
            Limits = Inner(fields, before, numbers, wind, gust),
            WindLimitKt = before?.WindLimitKt is null ? null : wind,
            GustLimitKt = before?.GustLimitKt is null ? null : gust,
            CrosswindLimitKt = numbers.Of("limitAnybody", before?.CrosswindLimitKt, typed.InKnots),
            LeastVisibilityM = numbers.Of("leastVisibility", before?.LeastVisibilityM, kilometres => 1000 * kilometres),
            LeastCeilingM = numbers.Of("leastCeiling", before?.LeastCeilingM, typed.Metres),
            LeastCirclingHeightM = Groups(group => group.Circling, before?.LeastCirclingHeightM, typed.Metres),
            SteepestBankDeg = Groups(group => group.Bank, before?.SteepestBankDeg, degrees => degrees),
            LowStallMarginPct = numbers.Of("lowMargin", before?.LowStallMarginPct, percent => percent),
            LowBelowM = numbers.Of("lowBelow", before?.LowBelowM, typed.Metres),
            SinkingPerS = numbers.Of("sinking", before?.SinkingPerS, typed => typed / SinkingUnits),
            CoolingKPerH = numbers.Of("cooling", before?.CoolingKPerH, kelvins => kelvins),
            Entrainment = numbers.Of("entrainment", before?.Entrainment, ratio => ratio),
        };
    }

    /// <summary>Sinking is typed in millionths a second.</summary>
    public const double SinkingUnits = 1e6;

    private static SiteLimitsJson? Inner(SiteFields fields, SiteJson? site, TypedNumbers numbers, double? wind, double? gust)
    {
        var before = site?.Limits;
        double? Knots(string field, double? exact) => numbers.Of(field, exact, fields.Typed.InKnots);
        var across = new CrosswindLimitsJson(
            Knots("limitBeforeSolo", before?.CrosswindKt?.BeforeSolo),
            Knots("limitLocalSolo", before?.CrosswindKt?.LocalSolo),
            Knots("limitCrossCountry", before?.CrosswindKt?.CrossCountry));
        var limits = new SiteLimitsJson
        {
            WindKt = site?.WindLimitKt is not null && before?.WindKt is null ? null : wind,
            GustKt = site?.GustLimitKt is not null && before?.GustKt is null ? null : gust,
            CrosswindKt = across == new CrosswindLimitsJson() ? null : across,
            CeilingM = numbers.Of("ceiling", before?.CeilingM, fields.Typed.Metres),
            CeilingNote = fields.NullIfEmpty("ceilingNote"),
        };
        return limits == new SiteLimitsJson() ? null : limits;
    }

    private static double? Of(ByExperienceJson? figures, string group) => group switch
    {
        "beforeSolo" => figures?.BeforeSolo,
        "localSolo" => figures?.LocalSolo,
        _ => figures?.CrossCountry,
    };
}
