namespace DayBrief.Reports;

/// <summary>Which report counts: one rule, and no order of lines decides. Stations and reports are invented.</summary>
public sealed class ReportChoiceTests
{
    private static readonly ReportPlace Field = new() { Near = new(2026, 6, 1, 12, 0, 0, TimeSpan.Zero) };

    private static readonly string[] Lines =
    [
        "METAR XXAA 010950Z 27004KT CAVOK 18/07 Q1020",
        "METAR XXAA 011020Z 30022G40KT 9999 BKN030 16/08 Q1019",
        "METAR XXAA 011050Z NIL",
        "METAR XXBB 011020Z 00000KT 0200 FG VV001 09/09 Q1021",
        "METAR XXCC 011050Z 25010KT CAVOK 19/05 Q1020",
    ];

    public static TheoryData<int> Orders => [.. Enumerable.Range(0, Lines.Length)];

    [Theory]
    [MemberData(nameof(Orders))]
    public void The_fields_own_newest_counts_in_any_order(int turned)
    {
        var choice = Choose(turned, Field with { Station = "xxaa" });
        Assert.Equal(40, choice.Used!.Conditions.Wind!.Gust!.Value.Knots, tolerance: 1e-9);
        Assert.Equal((0.0, new DateTimeOffset(2026, 6, 1, 10, 20, 0, TimeSpan.Zero)), (choice.DistanceKm, choice.At));
        Assert.Equal(
            [ReportNotUsedReason.Older, ReportNotUsedReason.Nil, ReportNotUsedReason.OtherStation, ReportNotUsedReason.OtherStation],
            Reasons(choice));
    }

    [Theory]
    [MemberData(nameof(Orders))]
    public void Without_an_own_station_the_nearest_known_counts(int turned)
    {
        var choice = Choose(turned, Field with { Station = "XXZZ", DistancesKm = new Dictionary<string, double> { ["XXBB"] = 30, ["XXCC"] = 12 } });
        Assert.Equal(("XXCC", 12.0), (choice.Used!.Station, choice.DistanceKm));
        Assert.Equal(
            [ReportNotUsedReason.DistanceNotKnown, ReportNotUsedReason.DistanceNotKnown, ReportNotUsedReason.Nil, ReportNotUsedReason.Farther],
            Reasons(choice));
    }

    [Theory]
    [MemberData(nameof(Orders))]
    public void Of_several_unknown_stations_none_counts(int turned)
    {
        var choice = Choose(turned, Field);
        Assert.Null(choice.Used);
        Assert.Equal(4, choice.NotUsed.Count(entry => entry.Reason == ReportNotUsedReason.StationNotNamed));
    }

    [Fact]
    public void One_unknown_station_counts_with_its_distance_not_known()
    {
        var choice = ReportChoice.Observation(MetarReader.ReadAll(Lines[3]), Field);
        Assert.Equal(("XXBB", null), (choice.Used!.Station, choice.DistanceKm));
    }

    [Fact]
    public void Reports_of_another_time_do_not_count()
    {
        var choice = Choose(0, Field with { Station = "XXAA", NotAfter = new(2026, 6, 1, 10, 0, 0, TimeSpan.Zero) });
        Assert.Equal(4, choice.Used!.Conditions.Wind!.Speed!.Value.Knots, tolerance: 1e-9);
        Assert.Contains(ReportNotUsedReason.OtherTime, Reasons(choice));
    }

    [Fact]
    public void A_correction_counts_before_what_it_corrects()
    {
        var reports = MetarReader.ReadAll("METAR COR XXAA 010950Z 27014KT CAVOK 18/07 Q1020\nMETAR XXAA 010950Z 27004KT CAVOK 18/07 Q1020");
        Assert.True(ReportChoice.Observation(reports, Field).Used!.IsCorrected);
    }

    [Fact]
    public void A_withdrawn_forecast_does_not_let_the_older_one_return()
    {
        var forecasts = TafReader.ReadAll("TAF AMD XXAA 010800Z 0108/0118 CNL\nTAF XXAA 010500Z 0106/0118 27010KT CAVOK");
        var choice = ReportChoice.Forecast(forecasts, Field);
        Assert.True(choice.Used!.IsCancelled);
        Assert.Equal(ReportNotUsedReason.Older, Assert.Single(choice.NotUsed).Reason);
    }

    private static ReportChoice<AerodromeReport> Choose(int turned, ReportPlace place) =>
        ReportChoice.Observation(MetarReader.ReadAll(string.Join('\n', Lines.Skip(turned).Concat(Lines.Take(turned)))), place);

    // In the order of the lines, whichever came first in the text.
    private static IEnumerable<ReportNotUsedReason> Reasons(ReportChoice<AerodromeReport> choice) =>
        choice.NotUsed.OrderBy(entry => Array.IndexOf(Lines, entry.Report.Raw)).Select(entry => entry.Reason);
}
