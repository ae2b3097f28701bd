namespace DayBrief.Reports;

/// <summary>TAF as they are written beside the letter of [WMO306] FM 51. Stations are invented.</summary>
public sealed class IrregularForecastTests
{
    [Fact]
    public void A_forecast_without_a_time_of_issue_is_read()
    {
        var forecast = TafReader.Read("TAF XXXX 0112/0212 24008KT 9999 SCT030 TEMPO 0114/0118 SHRA BKN015CB");
        Assert.Equal((0, new DayTime(1, 12, 0), new DayTime(1, 12, 0)), (forecast.Issued.Day, forecast.From!.Value, forecast.Dated));
        Assert.Equal(2, forecast.Groups.Length);
        Assert.Empty(forecast.NotUnderstood);
    }

    [Fact]
    public void Temporary_and_intermittent_after_a_probability_is_one_group()
    {
        foreach (var word in new[] { "TEMPO", "INTER" })
        {
            var forecast = TafReader.Read($"TAF XXXX 011100Z 0112/0212 24008KT 9999 SCT030 PROB30 {word} 0114/0118 TSRA");
            var group = Assert.Single(forecast.Groups.Skip(1));
            Assert.Equal((ForecastKind.Temporary, 30, new DayTime(1, 14, 0)), (group.Kind, group.ProbabilityPercent, group.From));
        }
    }

    /// <summary>The form before November 2008 ([WMO306] of those years): day and two hours, then hours alone.</summary>
    [Fact]
    public void The_form_before_2008_is_read()
    {
        var forecast = TafReader.Read("TAF XXXX 311000Z 311812 24008KT 9999 SCT030 TEMPO 2024 4000 SHRA BECMG 0406 1500 BR FM0900 27012KT CAVOK TX22/15Z TN08/04Z");
        Assert.Equal((new DayTime(31, 18, 0), new DayTime(1, 12, 0)), (forecast.From, forecast.To));
        Assert.Equal((new DayTime(31, 20, 0), new DayTime(31, 24, 0)), (forecast.Groups[1].From, forecast.Groups[1].To));
        Assert.Equal((new DayTime(1, 4, 0), new DayTime(1, 6, 0)), (forecast.Groups[2].From, forecast.Groups[2].To));
        Assert.Equal(new DayTime(1, 9, 0), forecast.Groups[3].From);
        Assert.Equal([4000, 1500], forecast.Groups[1..3].Select(group => group.Conditions.Visibility!.Value.Metres));
        Assert.Equal(new DayTime(1, 4, 0), Assert.Single(forecast.Minima).Time);
        Assert.Empty(forecast.NotUnderstood);
    }

    [Fact]
    public void A_visibility_after_TEMPO_is_no_time_in_the_present_form()
    {
        var forecast = TafReader.Read("TAF XXXX 011000Z 0112/0212 24008KT 9999 SCT030 TEMPO 2000 SHRA");
        Assert.Equal(2000, forecast.Groups[1].Conditions.Visibility!.Value.Metres);
        Assert.Null(forecast.Groups[1].From);
    }

    [Theory]
    [InlineData("FM0900", 2, 9)]
    [InlineData("FM1500", 1, 15)]
    [InlineData("FM 011500", 1, 15)]
    public void A_change_without_a_day_is_within_the_validity(string change, int day, int hour)
    {
        var forecast = TafReader.Read($"TAF XXXX 011000Z 0112/0212 24008KT 9999 SCT030 {change} 27030G45KT TSRA");
        Assert.Equal(new DayTime(day, hour, 0), forecast.Groups[1].From);
        Assert.Null(forecast.Groups[0].Conditions.Wind!.Gust);
        Assert.Empty(forecast.Groups[0].Conditions.Weather);
    }

    [Fact]
    public void A_change_at_a_time_that_cannot_be_does_not_speak_for_the_time_before()
    {
        var forecast = TafReader.Read("TAF XXXX 011000Z 0112/0212 24008KT 9999 SCT030 FM019960 27030G45KT TSRA");
        Assert.Empty(forecast.Groups[0].Conditions.Weather);
        Assert.Equal(["FM019960"], forecast.NotUnderstood);
    }

    /// <summary>[FAA28] chapter 27 for remarks of military forecasts.</summary>
    [Fact]
    public void Remarks_without_their_word_change_nothing()
    {
        var forecast = TafReader.Read("TAF KXXX 011000Z 0112/0212 24008KT 9999 SCT030 QNH2992INS BECMG 0114/0115 27010KT 9999 SKC QNH2990INS TX25/0120Z TN10/0210Z LAST NO AMDS AFT 0112 NEXT 0212");
        Assert.Equal(2, forecast.Groups.Length);
        Assert.Equal("LAST NO AMDS AFT 0112 NEXT 0212", forecast.Remarks);
        Assert.Equal(25, Assert.Single(forecast.Maxima).Temperature.Celsius, tolerance: 1e-9);
        Assert.Equal(["QNH2992INS", "QNH2990INS"], forecast.NotUnderstood);
    }

    [Fact]
    public void Remarks_stay_as_written() =>
        Assert.Equal("T 17 16 Q 1020 1021", TafReader.Read("TAF XXXX 011000Z 0112/0212 24008KT 9999 SCT030 RMK T 17 16 Q 1020 1021").Remarks);

    [Fact]
    public void NIL_and_cancelled_forecasts_say_so()
    {
        Assert.True(TafReader.Read("TAF XXXX NIL").IsNil);
        Assert.True(TafReader.Read("TAF XXXX 011000Z NIL").IsNil);
        Assert.True(TafReader.Read("TAF XXXX 011000Z 0112/0212 NIL").IsNil);
        Assert.True(TafReader.Read("TAF AMD XXXX 011000Z 0112/0212 CNL").IsCancelled);
    }
}
