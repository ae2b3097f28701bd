using DayBrief.House;

namespace DayBrief.Soundings;

/// <summary>Every real ascent beside this clone is read and agrees with its independent decode.</summary>
public sealed class SharedAscentTests
{
    [Theory]
    [InlineData("fm35_albany_dd19_12z")]
    [InlineData("fm35_jackson_20060922_12z")]
    [InlineData("fm35_saopaulo_20230223_12z")]
    [InlineData("fm35_sterling_20261006_12z")]
    public void FM35_original_equals_the_independent_decode(string id)
    {
        var sounding = IndependentDecode.ReadOriginal(id + ".txt");
        Assert.Equal("FM 35 TEMP", sounding.Source.Format);
        IndependentDecode.AssertEqual(IndependentDecode.Rows(id), sounding);
    }

    [Theory]
    [InlineData("bufr_altenstadt_20250223_10z")]
    [InlineData("bufr_idar_20150712_05z")]
    [InlineData("bufr_praha_20071120_12z")]
    [InlineData("fm35_albany_dd19_12z")]
    [InlineData("fm35_jackson_20060922_12z")]
    [InlineData("fm35_saopaulo_20230223_12z")]
    [InlineData("fm35_sterling_20261006_12z")]
    [InlineData("igra_goteborg_20180101_00z")]
    [InlineData("igra_norman_20130520_12z")]
    [InlineData("igra_norman_20130520_17z")]
    [InlineData("txt_norman_20110522_12z")]
    public void CSV_is_read_as_it_stands(string id)
    {
        var sounding = IndependentDecode.ReadCsv(id);
        Assert.Equal("CSV", sounding.Source.Format);
        IndependentDecode.AssertEqual(IndependentDecode.Rows(id), sounding);
    }

    /// <summary>These have a pressure twice (144 hPa; 115 and 20 hPa): the first value of each kind is kept.</summary>
    [Theory]
    [InlineData("json_norman_20110414_18z", 1)]
    [InlineData("txt_boise_20101209_12z", 2)]
    public void CSV_with_a_repeated_pressure_is_merged(string id, int repeated)
    {
        var rows = IndependentDecode.Rows(id);
        var merged = rows.GroupBy(row => row.PressureHpa)
            .Select(same => new IndependentDecode.Row(
                same.Key,
                same.Select(row => row.HeightM).FirstOrDefault(value => value is not null),
                same.Select(row => row.TemperatureC).FirstOrDefault(value => value is not null),
                same.Select(row => row.DewPointC).FirstOrDefault(value => value is not null),
                same.Select(row => row.FromDeg).FirstOrDefault(value => value is not null),
                same.Select(row => row.SpeedKt).FirstOrDefault(value => value is not null)))
            .ToArray();
        var sounding = IndependentDecode.ReadCsv(id);
        Assert.Equal(rows.Length - repeated, merged.Length);
        IndependentDecode.AssertEqual(merged, sounding);
        Assert.Contains(sounding.Remarks, remark => remark.Code == "duplicate-level");
    }

    [Fact]
    public void No_shared_CSV_is_left_untested() =>
        Assert.Equal(13, Directory.GetFiles(Repository.Shared("soundings", "csv"), "*.csv").Length);
}
