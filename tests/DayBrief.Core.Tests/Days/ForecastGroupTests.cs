using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>Each group of a TAF says its own thing at its own time. The rules of the code are [WMO306] FM 51; the TAFs are made up.</summary>
public sealed class ForecastGroupTests
{
    private const string Start = "TAF XXXX 200500Z 2006/2018 24005KT 9999 SCT040 ";
    private static readonly HazardCase Quiet = new();

    /// <summary>Seen to be told as "be down before it", though no usual limit is passed.</summary>
    [Theory]
    [InlineData("TEMPO 2012/2016 35012G20KT")]
    [InlineData("BECMG 2012/2014 26015G25KT")]
    public void Gusts_within_the_usual_limits_end_no_flying(string group)
    {
        var hazards = Of(group, new Runway("26", 260), new Runway("08", 80));
        Assert.DoesNotContain(hazards, CautionTable.EndsFlying);
        Assert.NotEmpty(hazards);
    }

    [Theory]
    [InlineData("TEMPO 2012/2016 TSRA", HazardKind.Thunder)]
    [InlineData("PROB30 2012/2016 SCT030CB", HazardKind.Cumulonimbus)]
    [InlineData("TEMPO 2012/2016 SQ", HazardKind.Squall)]
    [InlineData("TEMPO 2012/2016 SHGR", HazardKind.Hail)]
    [InlineData("TEMPO 2012/2016 FZRA", HazardKind.FreezingPrecipitation)]
    [InlineData("TEMPO 2012/2016 3000 BR", HazardKind.VisibilityBelowLeast)]
    [InlineData("TEMPO 2012/2016 BKN008", HazardKind.CeilingBelowLeast)]
    [InlineData("TEMPO 2012/2016 24024KT", HazardKind.WindOverLimit)]
    [InlineData("TEMPO 2012/2016 24015G35KT", HazardKind.GustOverLimit)]
    public void What_ends_flying_is_said_at_its_own_time(string group, HazardKind kind)
    {
        var hazard = Of(group).Single(hazard => hazard.Kind == kind);
        Assert.True(CautionTable.EndsFlying(hazard));
        Assert.Equal((12, 16), (hazard.From!.Value.Hour, hazard.To!.Value.Hour));
    }

    [Fact]
    public void Each_group_is_told_not_only_the_first() =>
        Assert.Equal(
            [(9, 11), (13, 15)],
            Of("TEMPO 2009/2011 TSRA PROB40 2013/2015 TSRA").Where(hazard => hazard.Kind == HazardKind.Thunder)
                .Select(hazard => (hazard.From!.Value.Hour, hazard.To!.Value.Hour)).Order());

    /// <summary>A probable group weighs less than one that is forecast without a probability.</summary>
    [Fact]
    public void A_probable_group_is_less_likely() =>
        Assert.Equal(
            [Chance.Likely, Chance.Possible],
            Of("PROB40 2009/2011 TSRA TEMPO 2013/2015 TSRA").Where(hazard => hazard.Kind == HazardKind.Thunder)
                .Select(hazard => CautionTable.RiskOf(hazard).Chance));

    /// <summary>Low cloud of the beginning goes on through a change of the wind, until the end of the change that lifts it.</summary>
    [Fact]
    public void What_a_change_does_not_name_goes_on()
    {
        var low = (Quiet with { Taf = "TAF XXXX 200500Z 2006/2018 24005KT 9999 BKN008 BECMG 2008/2009 24010KT BECMG 2010/2012 SCT040" })
            .Hazards().Where(hazard => hazard.Kind == HazardKind.CeilingBelowLeast).ToArray();
        Assert.Equal(12, low.Max(hazard => hazard.To!.Value.Hour));
        Assert.All(low, hazard => Assert.True(hazard.From!.Value.Hour <= 8));
    }

    [Fact]
    public void A_limit_that_is_not_set_says_so()
    {
        Assert.False(Assert.Single(Of("TEMPO 2012/2016 24024KT").Single(hazard => hazard.Kind == HazardKind.WindOverLimit).Passed).IsSet);
        var set = Quiet with { Site = Quiet.Site with { Limits = new() { Wind = Speed.FromKnots(18) } }, Taf = Start + "TEMPO 2012/2016 24024KT" };
        Assert.True(Assert.Single(set.Hazards().Single(hazard => hazard.Kind == HazardKind.WindOverLimit).Passed).IsSet);
    }

    /// <summary>A second runway along the wind leaves a way to land.</summary>
    [Fact]
    public void Crosswind_ends_flying_only_where_no_runway_is_within_the_limit()
    {
        const string across = "TEMPO 2012/2016 33018KT";
        Assert.True(CautionTable.EndsFlying(Of(across, new Runway("24", 240)).Single(hazard => hazard.Kind == HazardKind.Crosswind)));
        Assert.False(CautionTable.EndsFlying(Of(across, new Runway("24", 240), new Runway("33", 330)).Single(hazard => hazard.Kind == HazardKind.Crosswind)));
    }

    private static IReadOnlyList<Hazard> Of(string groups, params Runway[] runways) =>
        (Quiet with { Site = Quiet.Site with { Runways = [.. runways] }, Taf = Start + groups }).Hazards();
}
