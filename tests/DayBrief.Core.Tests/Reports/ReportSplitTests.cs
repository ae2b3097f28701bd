namespace DayBrief.Reports;

/// <summary>No report is made of two: what begins one ([WMO306] volume I.1, FM 15, 15.1 and FM 51, 51.1; bulletins as in
/// WMO-No. 386) also where no end sign stands. Stations are invented.</summary>
public sealed class ReportSplitTests
{
    private const string Calm = "XXAA 010950Z 27004KT CAVOK 18/07 Q1020";
    private const string Storm = "XXBB 011020Z 30022G40KT 0400 TSRA FG BKN008CB 12/12 Q1009";

    public static TheoryData<string> Pairs =>
    [
        $"METAR {Calm}\nMETAR {Storm}",
        $"METAR {Storm}\nMETAR {Calm}",
        $"{Calm}\n{Storm}",
        $"{Storm}\r\n{Calm}\r\n",
        $"METAR {Calm} METAR {Storm}",
        $"{Calm} {Storm}",
        $"METAR\n{Calm}\n{Storm}",
        $"METAR COR\n{Calm}\nSPECI {Storm}",
        $"> METAR {Calm}\n> METAR {Storm}\n",
        $">{Calm}\n>{Storm}",
        $"{Calm}\n\n{Storm}\n",
        $"<pre>{Calm}<br/>{Storm}</pre>",
        $"<p>METAR {Calm}</p><p>METAR {Storm}</p>",
        $"2026/06/01 09:50\n{Calm}\n\n2026/06/01 10:20\n{Storm}\n",
        $"SAXX41 XXAA 010950\nMETAR {Calm}\nSAXX41 XXBB 011020\nMETAR {Storm}\nNNNN",
        $"COR {Calm}\nCOR {Storm}",
        $"{Calm} NOSIG\n{Storm} TEMPO 4000 SHRA",
        $"{Calm} RMK QFE 745\n{Storm} RMK NIL",
        $"metar {Calm.ToLowerInvariant()}\nmetar {Storm.ToLowerInvariant()}",
        $"METAR {Calm}=\nMETAR {Storm}=",
        $"\"METAR {Calm}\"\n\"METAR {Storm}\"".Replace("Q1020\"", "Q1020", StringComparison.Ordinal).Replace("Q1009\"", "Q1009", StringComparison.Ordinal),
    ];

    [Theory]
    [MemberData(nameof(Pairs))]
    public void Two_reports_stay_two(string text)
    {
        var reports = MetarReader.ReadAll(text);
        Assert.Equal(2, reports.Count);
        var calm = Assert.Single(reports, report => report.Station == "XXAA");
        var storm = Assert.Single(reports, report => report.Station == "XXBB");
        Assert.Equal((4, null, 18, 1020), Figures(calm));
        Assert.Empty(calm.Conditions.Weather);
        Assert.Empty(calm.Conditions.Clouds);
        Assert.Empty(calm.NotUnderstood);
        Assert.Equal((22, 40, 12, 1009), Figures(storm));
        Assert.Equal(["TSRA", "FG"], storm.Conditions.Weather.Select(weather => weather.Code));
        Assert.Empty(storm.NotUnderstood);
    }

    [Fact]
    public void Reports_and_forecasts_in_one_text_stay_apart()
    {
        const string text = "XXAA 010950Z 27004KT CAVOK 18/07 Q1020\nXXAA 010500Z 0106/0124 27010KT 9999 SCT040\n  BECMG 0112/0114 29015G25KT\n  PROB30 TEMPO 0114/0118 TSRA\nXXBB 0106/0124 24008KT CAVOK\nXXBB 011020Z NIL\nXXCC NIL\nTAF\nXXDD 010500Z NIL\nXXEE 011020Z 00000KT 9999 FEW040 20/10 Q1019";
        Assert.Equal(["XXAA", "XXBB", "XXCC", "XXEE"], MetarReader.ReadAll(text).Select(report => report.Station));
        var forecasts = TafReader.ReadAll(text);
        Assert.Equal(["XXAA", "XXBB", "XXDD"], forecasts.Select(forecast => forecast.Station));
        Assert.Equal(3, forecasts[0].Groups.Length);
        Assert.True(forecasts[2].IsNil);
    }

    [Fact]
    public void Text_without_a_station_and_time_begins_no_report() =>
        Assert.Empty(MetarReader.ReadAll("WIND 27010KT\nNEXT 011200Z\nLAST 010000Z AUTO\nThe METAR of today says"));

    [Fact]
    public void A_remark_about_the_next_forecast_begins_none()
    {
        var forecast = Assert.Single(TafReader.ReadAll("TAF XXAA 010500Z 0106/0112 27010KT P6SM SKC RMK FCST 011200Z\nNEXT 011200Z"));
        Assert.Equal("FCST 011200Z NEXT 011200Z", forecast.Remarks);
    }

    [Theory]
    [InlineData("METAR XXAA NIL")]
    [InlineData("METAR XXAA NIL=")]
    [InlineData("XXAA NIL")]
    public void A_report_that_was_not_made_is_nil_without_a_time(string text)
    {
        var report = MetarReader.Read(text);
        Assert.True(report.IsNil);
        Assert.Equal(0, report.Time.Day);
        Assert.Null(report.Time.NearestTo(new(2026, 6, 1, 12, 0, 0, TimeSpan.Zero)));
    }

    private static (double?, double?, double?, double?) Figures(AerodromeReport report) => (
        Rounded(report.Conditions.Wind?.Speed?.Knots), Rounded(report.Conditions.Wind?.Gust?.Knots),
        Rounded(report.Temperature?.Celsius), Rounded(report.Qnh?.Hectopascals));

    private static double? Rounded(double? value) => value is { } number ? Math.Round(number, 6) : null;
}
