using System.Text.Json;
using DayBrief.Days;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Sites;

/// <summary>SITE.json: every field goes in and comes out again, and each wrong one is named.</summary>
public sealed class SiteJsonTests
{
    private const string Full =
        """
        {"id":"harrow","name":"Harrow (invented)","latitude":47.1,"longitude":10.2,"elevationM":612,"timeZone":"Europe/Vienna",
         "groundCover":"crops","groundWetness":"dry","runways":[{"designator":"08","headingDeg":81,"surface":"grass","headingMagneticDeg":77}],
         "usableDepthM":700,"usableClimbMs":0.7,"units":"metric","terrain":"valley","terrainKind":"mountains","magneticVariationDeg":4,
         "limits":{"windKt":25,"gustKt":30,"crosswindKt":{"beforeSolo":8,"localSolo":10,"crossCountry":15},"ceilingM":2900,"ceilingNote":"1,900 m at weekends"},
         "leastCirclingHeightM":{"beforeSolo":450,"localSolo":400,"crossCountry":300},"steepestBankDeg":{"beforeSolo":25,"localSolo":35,"crossCountry":50},
         "lowStallMarginPct":30,"lowBelowM":600,"windLimitKt":25,"gustLimitKt":30,"crosswindLimitKt":18,"leastVisibilityM":3000,"leastCeilingM":400,
         "sinkingPerS":4.5E-06,"coolingKPerH":0.2,"entrainment":0.25,
         "launchMethods":["winch","aerotow"],"language":"de","standingNotes":"Call before taxiing.","emergencyLine":"112, then the tower"}
        """;

    [Fact]
    public void Every_field_goes_in_and_comes_out_again()
    {
        var read = SiteJson.Parse(Full);
        var again = SiteJson.Of(read.ToSite());
        Assert.Equal(JsonSerializer.Serialize(read, Json.Line), JsonSerializer.Serialize(again, Json.Line));
        Assert.DoesNotContain(typeof(SiteJson).GetProperties(), field => field.Name is not (nameof(SiteJson.Automation) or nameof(SiteJson.Sending)) && field.GetValue(again) is null);
    }

    [Fact]
    public void Only_position_elevation_and_zone_are_required()
    {
        var site = SiteJson.Parse("""{"latitude":52,"longitude":-1,"elevationM":100,"timeZone":"Europe/London"}""").ToSite();
        Assert.Null(site.TerrainKind);
        Assert.Equal(new SiteLimits(), site.Limits);
        Assert.Empty(site.LaunchMethods);
        Assert.Null(SiteJson.Of(site).Limits);
    }

    /// <summary>True = magnetic + variation, east positive: 350° magnetic with 15° east is 5° true.</summary>
    [Theory]
    [InlineData(350, 15, 5)]
    [InlineData(5, -10, 355)]
    [InlineData(358, 2, 360)]
    public void The_true_heading_is_worked_out_from_the_magnetic_one(double magnetic, double variation, double expected)
    {
        var json = Small() with { MagneticVariationDeg = variation, Runways = [new("x", null, null, magnetic)] };
        Assert.Equal(expected, json.ToSite().Runways[0].HeadingDegrees, tolerance: 1e-9);
    }

    [Theory]
    [InlineData("""{"magneticVariationDeg":200}""", "site.magneticVariationDeg")]
    [InlineData("""{"terrainKind":"swamp"}""", "site.terrainKind")]
    [InlineData("""{"launchMethods":["winch","catapult"]}""", "site.launchMethods[1]")]
    [InlineData("""{"limits":{"windKt":-1}}""", "site.limits.windKt")]
    [InlineData("""{"limits":{"crosswindKt":{"localSolo":101}}}""", "site.limits.crosswindKt.localSolo")]
    [InlineData("""{"leastCirclingHeightM":{"localSolo":99}}""", "site.leastCirclingHeightM.localSolo")]
    [InlineData("""{"steepestBankDeg":{"beforeSolo":61}}""", "site.steepestBankDeg.beforeSolo")]
    [InlineData("""{"lowStallMarginPct":14}""", "site.lowStallMarginPct")]
    [InlineData("""{"lowBelowM":3001}""", "site.lowBelowM")]
    [InlineData("""{"windLimitKt":-1}""", "site.windLimitKt")]
    [InlineData("""{"gustLimitKt":101}""", "site.gustLimitKt")]
    [InlineData("""{"crosswindLimitKt":-0.1}""", "site.crosswindLimitKt")]
    [InlineData("""{"leastVisibilityM":-1}""", "site.leastVisibilityM")]
    [InlineData("""{"leastCeilingM":5001}""", "site.leastCeilingM")]
    [InlineData("""{"sinkingPerS":0.001}""", "site.sinkingPerS")]
    [InlineData("""{"coolingKPerH":4}""", "site.coolingKPerH")]
    [InlineData("""{"entrainment":1.1}""", "site.entrainment")]
    [InlineData("""{"language":"xx"}""", "site.language")]
    [InlineData("""{"runways":[{"designator":"09","headingDeg":90},{"designator":"27"}]}""", "site.runways[1].headingDeg")]
    [InlineData("""{"runways":[{"designator":"09","headingMagneticDeg":90}]}""", "site.runways[0].headingDeg")]
    [InlineData("""{"magneticVariationDeg":5,"runways":[{"headingDeg":90,"headingMagneticDeg":95}]}""", "site.runways[0].headingMagneticDeg")]
    [InlineData("""{"runways":[null]}""", "site.runways[0].headingDeg")]
    public void A_wrong_field_is_named(string change, string field)
    {
        var refused = Assert.Throws<InvalidInputException>(Changed(change).ToSite);
        Assert.Equal(field, Assert.Single(refused.Errors).Field);
    }

    /// <summary>A site may name a limit in two places; whichever is stricter keeps people on the ground.</summary>
    [Theory]
    [InlineData("""{"windLimitKt":20,"limits":{"windKt":25}}""", 20)]
    [InlineData("""{"windLimitKt":25,"limits":{"windKt":20}}""", 20)]
    [InlineData("""{"windLimitKt":22}""", 22)]
    [InlineData("""{"limits":{"windKt":23}}""", 23)]
    public void Of_two_wind_limits_the_smaller_holds(string change, double knots) =>
        Assert.Equal(knots, Changed(change).ToSite().Limits.Wind!.Value.Knots, tolerance: 1e-9);

    [Fact]
    public void The_crosswind_limit_for_everybody_holds_for_each_group_that_has_no_smaller_one()
    {
        var crosswind = Changed("""{"crosswindLimitKt":12,"limits":{"crosswindKt":{"beforeSolo":8,"crossCountry":15}}}""").ToSite().Limits.Crosswind;
        Assert.Equal([8, 12, 12], new[] { crosswind.BeforeSolo, crosswind.LocalSolo, crosswind.CrossCountry }.Select(limit => Math.Round(limit!.Value.Knots, 9)));
    }

    /// <summary>What a site leaves open is not a licence: the defaults (common practice, no source) fall with experience, and
    /// no group is ever without one.</summary>
    [Fact]
    public void A_site_that_sets_nothing_has_cautious_limits_for_every_group()
    {
        var circling = Small().ToSite().Limits.Circling;
        var rules = Enum.GetValues<Experience>().Select(circling.For).ToArray();
        Assert.Equal([400, 350, 250], rules.Select(rule => rule.LeastHeight.Metres));
        Assert.Equal([30, 40, 45], rules.Select(rule => rule.SteepestBankDegrees));
        Assert.All(rules, rule => Assert.False(rule.LeastHeightSet || rule.SteepestBankSet));
        Assert.All(rules, rule => Assert.True(rule.LowMarginPct > 15 && rule.LowBelow > rule.LeastHeight));
    }

    private static SiteJson Changed(string change) =>
        SiteJson.Parse("{\"latitude\":52,\"longitude\":-1,\"elevationM\":100,\"timeZone\":\"Europe/London\"," + change[1..]);

    private static SiteJson Small() => new() { Latitude = 52, Longitude = -1, ElevationM = 100, TimeZone = "Europe/London" };
}
