namespace DayBrief.Reports;

/// <summary>Groups as stations really write them: read right, or kept as text; never read wrong without a word.</summary>
public sealed class IrregularGroupTests
{
    private const double Mile = 1609.344;

    /// <summary>[FAA28] chapter 24: visibility in statute miles and fractions; reportable fractions are below one, so an upper
    /// figure that is not less than the lower is a whole number glued to a fraction.</summary>
    [Theory]
    [InlineData("11/2SM", 1.5)]
    [InlineData("1 1/2SM", 1.5)]
    [InlineData("13/4SM", 1.75)]
    [InlineData("21/4SM", 2.25)]
    [InlineData("2 1/4SM", 2.25)]
    [InlineData("15/8SM", 1.625)]
    [InlineData("3/4SM", 0.75)]
    [InlineData("11/16SM", 0.6875)]
    [InlineData("15SM", 15)]
    [InlineData("1/4SM", 0.25)]
    [InlineData("1/2 SM", 0.5)]
    public void Statute_miles(string group, double miles)
    {
        var report = MetarReader.Read($"METAR KXXX 011200Z 27010KT {group} BKN010 10/05 A2992");
        Assert.Equal(miles * Mile, report.Conditions.Visibility!.Value.Metres, tolerance: 1e-6);
        Assert.Empty(report.NotUnderstood);
    }

    [Theory]
    [InlineData("22/2SM")]
    [InlineData("10/5SM")]
    [InlineData("1/0SM")]
    [InlineData("999SM")]
    public void Miles_that_cannot_be_are_kept_as_text(string group)
    {
        var report = MetarReader.Read($"METAR KXXX 011200Z 27010KT {group} BKN010 10/05 A2992");
        Assert.Null(report.Conditions.Visibility);
        Assert.Equal([group], report.NotUnderstood);
    }

    [Theory]
    [InlineData("20KM", 20_000)]
    [InlineData("7KM", 7000)]
    [InlineData("3000M", 3000)]
    [InlineData("6000NDV", 6000)]
    public void Metres_and_kilometres(string group, double metres)
    {
        var report = MetarReader.Read($"METAR XXXX 011200Z 27010KT {group} BKN010 10/05 Q1015");
        Assert.Equal(metres, report.Conditions.Visibility!.Value.Metres, tolerance: 1e-6);
        Assert.Empty(report.NotUnderstood);
    }

    [Fact]
    public void Of_several_directions_the_worst_visibility_counts()
    {
        var conditions = MetarReader.Read("METAR XXXX 011200Z 27010KT 9999 1500SW 3000N BKN010 10/05 Q1015").Conditions;
        Assert.Equal((10_000, 1500), (conditions.Visibility!.Value.Metres, conditions.LowestVisibility!.Value.Metres));
    }

    /// <summary>[WMO306] code table 4678: TS is thunder wherever it stands in a group.</summary>
    [Theory]
    [InlineData("+VCTSRA", true)]
    [InlineData("-VCTSRA", true)]
    [InlineData("VCTSRA", true)]
    [InlineData("VC+TSRA", true)]
    [InlineData("TSVCSH", false)]
    [InlineData("-TSRA/RA", false)]
    [InlineData("RA/TSRA", false)]
    [InlineData("SHTSRA", false)]
    [InlineData("RATS", false)]
    [InlineData("TSGRRASNGSDZ", false)]
    public void Thunder_is_never_lost(string group, bool inVicinity)
    {
        var report = MetarReader.Read($"METAR XXXX 011200Z 27010KT 9999 {group} BKN010 10/05 Q1015");
        var thunder = Assert.Single(report.Conditions.Weather, weather => weather.IsThunderstorm);
        Assert.Equal(inVicinity, thunder.InVicinity);
        var forecast = TafReader.Read($"TAF XXXX 011200Z 0112/0212 27010KT 9999 SCT030 TEMPO 0114/0118 {group}");
        Assert.Single(forecast.Groups[1].Conditions.Weather, weather => weather.IsThunderstorm);
    }

    [Fact]
    public void Glued_weather_is_taken_apart()
    {
        var weather = MetarReader.Read("METAR XXXX 011200Z 27010KT 9999 TSVCSH -TSRA/SN BKN010 10/05 Q1015").Conditions.Weather;
        Assert.Equal(["TS", "VCSH", "-TSRA", "SN"], weather.Select(group => group.Code));
        Assert.Equal([false, true, false, false], weather.Select(group => group.InVicinity));
    }

    [Theory]
    [InlineData("RASX")]
    [InlineData("+")]
    [InlineData("VC")]
    [InlineData("RA/")]
    [InlineData("TSRAX")]
    public void What_is_no_weather_is_kept_as_text(string group) =>
        Assert.Equal([group], MetarReader.Read($"METAR XXXX 011200Z 27010KT 9999 {group} BKN010 10/05 Q1015").NotUnderstood);

    [Theory]
    [InlineData("FEW050CU", CloudAmount.Few, 5000, null)]
    [InlineData("BKN008SC", CloudAmount.Broken, 800, null)]
    [InlineData("OVC100AS", CloudAmount.Overcast, 10_000, null)]
    [InlineData("SCT 030", CloudAmount.Scattered, 3000, null)]
    [InlineData("SCT030 CB", CloudAmount.Scattered, 3000, ConvectiveCloud.Cumulonimbus)]
    [InlineData("SCT030 TCU", CloudAmount.Scattered, 3000, ConvectiveCloud.ToweringCumulus)]
    public void Clouds_with_their_kind(string group, CloudAmount amount, double feet, ConvectiveCloud? convective)
    {
        var report = MetarReader.Read($"METAR XXXX 011200Z 27010KT 9999 {group} 10/05 Q1015");
        var layer = Assert.Single(report.Conditions.Clouds);
        Assert.Equal((amount, convective), (layer.Amount, layer.Convective));
        Assert.Equal(feet, layer.Base!.Value.Feet, tolerance: 1e-6);
        Assert.Empty(report.NotUnderstood);
    }

    /// <summary>[WMO306] FM 15 section 3 and its Australian form: what follows FM, INTER, TEMPO, PROB is a forecast.</summary>
    [Theory]
    [InlineData("FM1130 18030G45KT 0800 TSRA BKN005")]
    [InlineData("FM011130 18030G45KT 0800 TSRA BKN005")]
    [InlineData("FM 1130 18030G45KT 0800 TSRA BKN005")]
    [InlineData("INTER 0112/0114 18030G45KT 0800 TSRA BKN005")]
    [InlineData("INTER 18030G45KT 0800 TSRA BKN005")]
    [InlineData("PROB30 INTER 18030G45KT 0800 TSRA BKN005")]
    [InlineData("PROB40 18030G45KT 0800 TSRA BKN005")]
    [InlineData("TEMPO FM1130 TL1200 18030G45KT 0800 TSRA BKN005")]
    [InlineData("GRADU 18030G45KT 0800 TSRA BKN005")]
    [InlineData("BLU 18030G45KT 0800 TSRA BKN005 RED")]
    [InlineData("BLU+ TEMPO 18030G45KT 0800 TSRA BKN005 RED")]
    [InlineData("NOSIG FM1130 18030G45KT 0800 TSRA BKN005")]
    public void A_trend_is_not_the_observation(string trend)
    {
        var report = MetarReader.Read($"METAR XXXX 011100Z 27004KT 9999 FEW040 18/07 Q1020 {trend}");
        Assert.Equal(4, report.Conditions.Wind!.Speed!.Value.Knots, tolerance: 1e-9);
        Assert.Null(report.Conditions.Wind.Gust);
        Assert.Empty(report.Conditions.Weather);
        Assert.Equal(10_000, report.Conditions.Visibility!.Value.Metres);
        Assert.Null(report.Conditions.LowestVisibility);
        Assert.Single(report.Conditions.Clouds);
        var last = report.Trends[^1];
        Assert.Equal(45, last.Conditions.Wind!.Gust!.Value.Knots, tolerance: 1e-9);
        Assert.True(last.Conditions.Weather[0].IsThunderstorm);
    }

    [Fact]
    public void Trends_follow_each_other()
    {
        var report = MetarReader.Read("METAR YXXX 011100Z 27004KT 9999 FEW040 18/07 Q1020 FM1130 18015KT 9999 SHRA INTER 1230/1330 3000 TSRA PROB30 TEMPO 0112/0113 FG NOSIG RMK RF00.0/000.0");
        Assert.Equal([ForecastKind.From, ForecastKind.Temporary, ForecastKind.Temporary, ForecastKind.NoSignificantChange], report.Trends.Select(trend => trend.Kind));
        Assert.Equal(30, report.Trends[2].ProbabilityPercent);
        Assert.Equal(new DayTime(0, 11, 30), report.Trends[0].From);
        Assert.Equal("RF00.0/000.0", report.Remarks);
    }

    [Fact]
    public void A_second_wind_or_temperature_does_not_replace_the_first()
    {
        var report = MetarReader.Read("METAR XXXX 011100Z 27004KT 18030KT 9999 FEW040 18/07 30/20 Q1020 A2900 09050KT 0400 BKN001 CAVOK");
        Assert.Equal((270, 18, 1020), (report.Conditions.Wind!.FromDegrees, Math.Round(report.Temperature!.Value.Celsius, 6), Math.Round(report.Qnh!.Value.Hectopascals, 6)));
        Assert.False(report.Conditions.IsCavok);
        Assert.Single(report.Conditions.Clouds);
        Assert.Equal(["18030KT", "30/20", "09050KT", "0400", "BKN001", "CAVOK"], report.NotUnderstood);
    }

    [Fact]
    public void Unknown_groups_of_a_trend_are_kept_too() =>
        Assert.Equal(["WXYZ9"], MetarReader.Read("METAR XXXX 011100Z 27004KT 9999 FEW040 18/07 Q1020 TEMPO 4000 WXYZ9").NotUnderstood);

    [Theory]
    [InlineData("Q2992")]
    [InlineData("A1013")]
    [InlineData("Q0101")]
    public void A_pressure_that_cannot_be_is_kept_as_text(string group)
    {
        var report = MetarReader.Read($"METAR XXXX 011100Z 27004KT 9999 FEW040 18/07 {group}");
        Assert.Null(report.Qnh);
        Assert.Equal([group], report.NotUnderstood);
    }

    [Theory]
    [InlineData("METAR CXXX 011100Z CCA 27004KT 15SM SKC 18/07 A3012 RMK SLP200", true)]
    [InlineData("METAR XXXX 011100Z COR 27004KT CAVOK 18/07 Q1020", true)]
    [InlineData("METAR COR XXXX 011100Z 27004KT CAVOK 18/07 Q1020", true)]
    [InlineData("METAR XXXX 011100 27004KT CAVOK 18/07 Q1020", false)]
    [InlineData("METAR XXXX AUTO 011100Z 27004KT CAVOK 18/07 Q1020", false)]
    public void Heads_in_other_orders(string text, bool isCorrected)
    {
        var report = MetarReader.Read(text);
        Assert.Equal((isCorrected, new DayTime(1, 11, 0)), (report.IsCorrected, report.Time));
        Assert.Equal(4, report.Conditions.Wind!.Speed!.Value.Knots, tolerance: 1e-9);
        Assert.Empty(report.NotUnderstood);
    }
}
