using DayBrief.Service.Languages;

namespace DayBrief.Service.Features.Sites;

/// <summary>The page of a site gives back what it was given, converts what people type, and works out the other heading.</summary>
public sealed class SiteFormReadingTests
{
    private static readonly SiteJson Kept = SiteJson.Parse(
        """
        {"id":"hill","name":"Hill (invented)","latitude":47.1234567,"longitude":10.2,"elevationM":611.7,"timeZone":"Europe/Vienna",
         "groundCover":"crops","groundWetness":"dry","runways":[{"designator":"08","headingDeg":81.26,"surface":"grass","headingMagneticDeg":77.3},{"designator":"26","headingDeg":261,"headingMagneticDeg":257}],
         "usableDepthM":701,"usableClimbMs":0.73,"units":"feet-and-knots","terrainKind":"mountains","magneticVariationDeg":4.03,
         "limits":{"windKt":25.25,"crosswindKt":{"beforeSolo":8},"ceilingM":2900,"ceilingNote":"lower at weekends"},
         "leastCirclingHeightM":{"beforeSolo":443.3,"crossCountry":300},"steepestBankDeg":{"localSolo":35.5},"lowStallMarginPct":27.5,"lowBelowM":611.1,
         "gustLimitKt":31.13,"crosswindLimitKt":18.26,"leastVisibilityM":1234.56,"leastCeilingM":321.1,"sinkingPerS":4.5678E-06,"coolingKPerH":0.2345,"entrainment":0.23456,
         "launchMethods":["winch"],"language":"de","standingNotes":"Call.","emergencyLine":"112",
         "automation":{"soundingAddress":"https://example.org/{yyyy}","soundingAt":"06:10"}}
        """);

    [Fact]
    public void Opening_and_keeping_a_page_changes_nothing()
    {
        var (site, errors) = SiteFormReading.Read(SiteFields.Of(Kept), Kept);
        Assert.Empty(errors.Select(error => error.Detail));
        Assert.Empty(SiteChange.Between(Kept, site with { Runways = Kept.Runways }));
        Assert.Equal([81.3, 261], site.Runways!.Select(runway => runway.HeadingDeg!.Value));
    }

    /// <summary>1 ft is 0.3048 m and 1 kt is 1852/3600 m/s, exact [SI].</summary>
    [Fact]
    public void Feet_and_knots_become_metres_and_metres_per_second()
    {
        var (site, errors) = SiteFormReading.Read(Typed(("elevation", "1000"), ("usableDepth", "2500"), ("usableClimb", "2"), ("limitGust", "30")), Kept);
        Assert.Empty(errors);
        Assert.Equal(304.8, site.ElevationM!.Value, tolerance: 1e-9);
        Assert.Equal(762, site.UsableDepthM!.Value, tolerance: 1e-9);
        Assert.Equal(2 * 1852.0 / 3600, site.UsableClimbMs!.Value, tolerance: 1e-9);
        Assert.Equal(30, site.GustLimitKt);
    }

    [Fact]
    public void Metric_sites_type_metres_winds_in_kilometres_an_hour_and_climbs_in_metres_per_second()
    {
        var (site, errors) = SiteFormReading.Read(Typed(("typedIn", "metric"), ("elevation", "612"), ("usableDepth", "700"), ("usableClimb", "0,7"), ("ceiling", "2900"), ("limitWind", "36"), ("limitBeforeSolo", "14")), Kept);
        Assert.Empty(errors.Select(error => error.Detail));
        Assert.Equal((612, 700, 0.7, 2900), (site.ElevationM, site.UsableDepthM, site.UsableClimbMs, site.Limits!.CeilingM));
        Assert.Equal(19.44, site.Limits.WindKt!.Value, tolerance: 0.005);
    }

    /// <summary>True = magnetic + variation (4.03° east here, shown as 4).</summary>
    [Theory]
    [InlineData("runwayTrue-0", "91", 91, 87)]
    [InlineData("runwayMagnetic-0", "87", 91, 87)]
    [InlineData("variation", "10", 81.3, 71.3)]
    public void The_heading_that_was_not_changed_is_worked_out(string field, string typed, double heading, double magnetic)
    {
        var (site, errors) = SiteFormReading.Read(Typed((field, typed)), Kept);
        Assert.Empty(errors.Select(error => error.Detail));
        Assert.Equal(heading, site.Runways![0].HeadingDeg!.Value, tolerance: 0.06);
        Assert.Equal(magnetic, site.Runways[0].HeadingMagneticDeg!.Value, tolerance: 0.06);
    }

    [Theory]
    [InlineData("latitude", "91", "latitude")]
    [InlineData("elevation", "high", "elevation")]
    [InlineData("timeZone", "Europe/Viena", "timeZone")]
    [InlineData("limitCrossCountry", "-1", "limitCrossCountry")]
    [InlineData("runwayTrue-1", "400", "runwayTrue-1")]
    [InlineData("usableDepth", "10", "usableDepth")]
    [InlineData("terrainKind", "swamp", "terrainKind")]
    [InlineData("circlingBeforeSolo", "100", "circlingBeforeSolo")]
    [InlineData("circlingLocalSolo", "low", "circlingLocalSolo")]
    [InlineData("circlingCrossCountry", "99999", "circlingCrossCountry")]
    [InlineData("bankBeforeSolo", "10", "bankBeforeSolo")]
    [InlineData("bankLocalSolo", "61", "bankLocalSolo")]
    [InlineData("bankCrossCountry", "-1", "bankCrossCountry")]
    [InlineData("lowMargin", "5", "lowMargin")]
    [InlineData("lowBelow", "1", "lowBelow")]
    [InlineData("limitWind", "101", "limitWind")]
    [InlineData("limitGust", "101", "limitGust")]
    [InlineData("limitAnybody", "101", "limitAnybody")]
    [InlineData("leastVisibility", "51", "leastVisibility")]
    [InlineData("leastCeiling", "-1", "leastCeiling")]
    [InlineData("sinking", "101", "sinking")]
    [InlineData("cooling", "9", "cooling")]
    [InlineData("entrainment", "2", "entrainment")]
    [InlineData("launchMethods", "winch,catapult", "launchMethods")]
    public void What_is_wrong_is_told_at_its_field(string field, string typed, string told) =>
        Assert.Contains(told, SiteFormReading.Read(Typed((field, typed)), Kept).Errors.Select(error => error.Field));

    /// <summary>−500 m to 6000 m, in feet (1 ft is 0.3048 m, exact [SI]).</summary>
    [Fact]
    public void A_range_is_told_in_the_units_typed_and_the_readers_language()
    {
        var fields = Typed(("elevation", "99999"));
        var error = SiteFormReading.Read(fields, Kept).Errors.Single();
        Assert.Equal("Needs a number from -1640 ft to 19685 ft.", SiteErrorText.Of(error, fields, Language.English));
        Assert.StartsWith("Nötig ist", SiteErrorText.Of(error, fields, Language.German), StringComparison.Ordinal);
    }

    /// <summary>100 m is 328 ft, 3000 m is 9843 ft (1 ft is 0.3048 m, exact [SI]); the others are the contract's own numbers.</summary>
    [Theory]
    [InlineData("circlingLocalSolo", "1", "Needs a number from 328 ft to 9843 ft.")]
    [InlineData("bankLocalSolo", "1", "Needs a number from 15° to 60°.")]
    [InlineData("lowMargin", "1", "Needs a number from 15 % to 60 %.")]
    [InlineData("leastVisibility", "99", "Needs a number from 0 km to 50 km.")]
    [InlineData("sinking", "999", "Needs a number from -100·10⁻⁶/s to 100·10⁻⁶/s.")]
    [InlineData("cooling", "99", "Needs a number from -3 °C/h to 3 °C/h.")]
    public void The_range_of_a_limit_is_told_in_its_own_unit(string field, string typed, string told)
    {
        var fields = Typed((field, typed));
        Assert.Equal(told, SiteErrorText.Of(SiteFormReading.Read(fields, Kept).Errors.Single(), fields, Language.English));
    }

    /// <summary>1 ft is 0.3048 m, exact [SI]; a limit goes back to where it stood.</summary>
    [Fact]
    public void Limits_are_typed_in_the_units_of_the_site()
    {
        var (site, errors) = SiteFormReading.Read(
            Typed(("circlingLocalSolo", "1000"), ("bankBeforeSolo", "28"), ("limitGust", "33"), ("leastVisibility", "1,5"), ("leastCeiling", "1000"), ("sinking", "4")), Kept);
        Assert.Empty(errors);
        Assert.Equal(304.8, site.LeastCirclingHeightM!.LocalSolo!.Value, tolerance: 1e-9);
        Assert.Equal(443.3, site.LeastCirclingHeightM.BeforeSolo);
        Assert.Equal((28, 33, null), (site.SteepestBankDeg!.BeforeSolo, site.GustLimitKt, site.Limits!.GustKt));
        Assert.Equal((1500, 4e-6), (site.LeastVisibilityM, site.SinkingPerS));
        Assert.Equal(304.8, site.LeastCeilingM!.Value, tolerance: 1e-9);
    }

    [Fact]
    public void A_default_that_is_shown_is_not_kept_as_a_choice()
    {
        var plain = Kept with { UsableDepthM = null, UsableClimbMs = null };
        Assert.Null(SiteFormReading.Read(SiteFields.Of(plain), plain).Site.UsableDepthM);
    }

    [Fact]
    public void A_mistyped_zone_brings_suggestions() =>
        Assert.Contains("Europe/Vienna", SiteFormReading.Read(Typed(("timeZone", "Viena")), Kept).Errors.Single().Detail, StringComparison.Ordinal);

    [Fact]
    public void What_the_page_does_not_show_stays() =>
        Assert.Equal(Kept.Automation, SiteFormReading.Read(Typed(("name", "New name")), Kept).Site.Automation);

    [Theory]
    [InlineData("Nördliches Feld (neu)", "noerdliches-feld-neu")]
    [InlineData("  A  B ", "a-b")]
    public void A_short_name_comes_from_the_name(string name, string expected) => Assert.Equal(expected, SiteId.Of(name));

    private static SiteFields Typed(params (string Field, string Value)[] changes)
    {
        var values = new Dictionary<string, string>(SiteFields.Of(Kept).Values);
        foreach (var (field, value) in changes)
            values[field] = value;
        return new(values);
    }
}
