using System.Text.Json;
using DayBrief.Units;

namespace DayBrief.Reports;

public sealed class MetarTests
{
    public static TheoryData<int> All => [.. Enumerable.Range(0, 30)];

    [Theory]
    [MemberData(nameof(All))]
    public void Real_reports_equal_the_rulings(int index)
    {
        var entry = SharedReports.Of("metar")[index];
        var report = MetarReader.Read(entry.String("raw")!);
        var expected = entry.Decode();
        Assert.Equal(expected.String("station"), report.Station);
        Assert.Equal(new DayTime((int)expected.Number("day")!, (int)expected.Number("hour")!, (int)expected.Number("minute")!), report.Time);
        Assert.Equal(expected.Flag("auto"), report.IsAutomatic);
        Assert.Equal(expected.Flag("cavok"), report.Conditions.IsCavok);
        Assert.Equal(expected.Number("temperature_c"), Rounded(report.Temperature?.Celsius));
        Assert.Equal(expected.Number("dewpoint_c"), Rounded(report.DewPoint?.Celsius));

        // The decode rounds inches to 0.1 hPa.
        Assert.Equal(expected.Number("qnh_hpa")!.Value, report.Qnh!.Value.Hectopascals, tolerance: 0.051);
        Assert.Equal(expected.Number("vertical_visibility_ft"), report.Conditions.VerticalVisibility?.Feet);
        Assert.Equal(expected.Weather(), report.Conditions.Weather.Select(weather => weather.Code));
        Assert.Equal(Ruled(entry, expected.Clouds()), SharedReports.Clouds(report.Conditions.Clouds));
        Wind(expected, report.Conditions.Wind!);
        Visibility(expected, report.Conditions.Visibility);
        Assert.Equal(
            expected.GetProperty("trend").EnumerateArray().Select(trend => trend.String("raw")),
            report.Trends.Where(trend => trend.Kind != ForecastKind.NoSignificantChange).Select(trend => trend.Raw));
    }

    /// <summary>[FAA28] chapter 24: the handbook's own example and its reading.</summary>
    [Fact]
    public void The_handbook_example_is_read_as_the_handbook_says()
    {
        var report = MetarReader.Read("METAR KOKC 011955Z AUTO 22015G25KT 180V250 3/4SM R17L/2600FT +TSRA BR OVC010CB 18/16 A2992 RMK AO2 TSB25 TS OHD MOV E SLP132");
        Assert.Equal(new DayTime(1, 19, 55), report.Time);
        var wind = report.Conditions.Wind!;
        Assert.Equal((220, 180, 250), (wind.FromDegrees, wind.VariesFromDegrees, wind.VariesToDegrees));
        Assert.Equal((15, 25), (Math.Round(wind.Speed!.Value.Knots, 9), Math.Round(wind.Gust!.Value.Knots, 9)));
        Assert.Equal(0.75 * 1609.344, report.Conditions.Visibility!.Value.Metres, tolerance: 1e-9);
        Assert.Equal(["R17L/2600FT"], report.RunwayGroups);
        Assert.Equal(["+TSRA", "BR"], report.Conditions.Weather.Select(weather => weather.Code));
        Assert.True(report.Conditions.Weather[0].IsThunderstorm);
        Assert.Equal([new CloudLayer(CloudAmount.Overcast, Height.FromFeet(1000), ConvectiveCloud.Cumulonimbus)], report.Conditions.Clouds);

        // [FAA28]: A2992 is 29.92 inches of mercury; 29.92 in are 1013.2 hPa [ICAO7488].
        Assert.Equal(1013.2, report.Qnh!.Value.Hectopascals, tolerance: 0.05);
        Assert.Equal("AO2 TSB25 TS OHD MOV E SLP132", report.Remarks);
        Assert.Empty(report.NotUnderstood);
    }

    [Fact]
    public void Missing_elements_are_not_known_rather_than_zero()
    {
        var report = MetarReader.Read("METAR XXXX 010000Z AUTO /////KT //// // ////// ///// Q////=");
        Assert.Null(report.Conditions.Wind!.Speed);
        Assert.Null(report.Conditions.Visibility);
        Assert.Null(report.Temperature);
        Assert.Null(report.Qnh);
        Assert.Empty(report.Conditions.Clouds);
    }

    [Fact]
    public void Groups_that_nobody_knows_are_kept_as_text() =>
        Assert.Equal(["BLU", "XYZ12"], MetarReader.Read("METAR XXXX 010000Z 00000KT CAVOK 10/05 Q1020 BLU XYZ12").NotUnderstood);

    [Fact]
    public void A_bulletin_gives_all_its_reports()
    {
        const string bulletin = "SAXX99 XXXX 010000\nMETAR\nAAAA 010000Z 00000KT CAVOK 10/05 Q1020=\nBBBB 010000Z NIL=\nSPECI CCCC 010010Z 09005KT 0500 FG VV001 02/02 Q1030=";
        var reports = MetarReader.ReadAll(bulletin);
        Assert.Equal(["AAAA", "BBBB", "CCCC"], reports.Select(report => report.Station));
        Assert.Equal([false, true, false], reports.Select(report => report.IsNil));
        Assert.True(reports[2].IsSpecial);
        Assert.Equal(100, reports[2].Conditions.VerticalVisibility!.Value.Feet, tolerance: 1e-9);
    }

    [Theory]
    [InlineData("hello world")]
    [InlineData("METAR")]
    [InlineData("METAR EDDF")]
    [InlineData("METAR EDDF 999999Z 00000KT")]
    public void What_is_no_report_is_refused(string text) => Assert.Throws<InvalidReportException>(() => MetarReader.Read(text));

    [Fact]
    public void The_day_of_a_report_is_found_near_a_date()
    {
        var reference = new DateTimeOffset(2026, 3, 1, 6, 0, 0, TimeSpan.Zero);
        Assert.Equal(new DateTimeOffset(2026, 2, 28, 23, 50, 0, TimeSpan.Zero), new DayTime(28, 23, 50).NearestTo(reference));
        Assert.Equal(new DateTimeOffset(2026, 3, 2, 0, 0, 0, TimeSpan.Zero), new DayTime(1, 24, 0).NearestTo(reference));
    }

    private static void Wind(JsonElement expected, SurfaceWind wind)
    {
        Assert.Equal(expected.Number("wind_dir_deg"), wind.FromDegrees);
        Assert.Equal(expected.Flag("wind_variable"), wind.IsVariable);
        Assert.Equal("KT", expected.String("wind_unit"));
        Assert.Equal(expected.Number("wind_speed"), Rounded(wind.Speed?.Knots));
        Assert.Equal(expected.Number("wind_gust"), Rounded(wind.Gust?.Knots));
        Assert.Equal(expected.Number("wind_var_from"), wind.VariesFromDegrees);
        Assert.Equal(expected.Number("wind_var_to"), wind.VariesToDegrees);
    }

    // Ruling for ESUP: //// is not measured, and the decode has null there. Miles are rounded to metres.
    private static void Visibility(JsonElement expected, Visibility? visibility)
    {
        Assert.Equal(expected.Number("visibility_m") is null, visibility is null);
        Assert.Equal(expected.Number("visibility_m") ?? 0, visibility?.Metres ?? 0, tolerance: 0.5);
    }

    // Rulings: ///TCU and //////CB are cloud of unknown amount (and base), which the decode leaves out.
    private static string[] Ruled(JsonElement entry, string[] clouds) => entry.String("adjudication") switch
    {
        { } ruling when ruling.StartsWith("///TCU", StringComparison.Ordinal) => [.. clouds, "///  TCU"],
        { } ruling when ruling.StartsWith("//////CB", StringComparison.Ordinal) => [.. clouds, "///  CB"],
        _ => clouds,
    };

    private static double? Rounded(double? value) => value is { } number ? Math.Round(number, 6) : null;
}
