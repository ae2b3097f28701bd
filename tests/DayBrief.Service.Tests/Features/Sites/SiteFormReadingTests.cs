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
        Assert.Equal(30, site.Limits!.GustKt);
    }

    [Fact]
    public void Metric_sites_type_metres_and_metres_per_second()
    {
        var (site, errors) = SiteFormReading.Read(Typed(("typedIn", "metric"), ("elevation", "612"), ("usableDepth", "700"), ("usableClimb", "0,7"), ("ceiling", "2900"), ("limitWind", "10"), ("limitBeforeSolo", "4")), Kept);
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
