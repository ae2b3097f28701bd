using System.Text;

namespace DayBrief.Soundings.Formats.Igra;

public sealed class IgraTests
{
    /// <summary>Invented lines, built to the columns of [IGRA2].</summary>
    internal const string Invented = """
        #USM00072403 2016 10 06 12 1103    8 ncdc-nws ncdc-nws  389833  -774669
        21     0 101300B   93B   86B-9999    42   305    15
        10   812  70000B 3125B   40B-9999   290   285   154
        20 -9999  88100 -9999    46B-9999   100 -9999 -9999
        20 -9999  92000 -9999    80 -8888    80 -9999 -9999
        20 -9999  60000 -9999   -40   500 -9999 -9999 -9999
        20 -9999  50000 -9999  -140 -9999   100 -9999 -9999
        20 -9999  40000 -9999  -280 -9999   100 -9999 -9999
        30 -9999 -9999   1500 -9999 -9999 -9999   270   100
        """;

    /// <summary>Decoded by fixed columns with another program (shared/soundings/csv); every level, every value.</summary>
    [Theory]
    [InlineData("igra_goteborg_20180101_00z", "SWM00002527")]
    [InlineData("igra_norman_20130520_12z", "USM00072357")]
    [InlineData("igra_norman_20130520_17z", "USM00072357")]
    public void Real_ascents_equal_the_independent_decode(string id, string station)
    {
        var sounding = IndependentDecode.ReadOriginal(id + ".igra2.txt");
        Assert.Equal(("IGRA v2", station), (sounding.Source.Format, sounding.Source.Station));
        IndependentDecode.AssertEqual(IndependentDecode.Rows(id), sounding);
    }

    /// <summary>The first two rows read by hand: 1013.00 hPa, 93 m, 8.6 °C, Td 4.4, 305° 1.5 m/s; 8 min 12 s, 700 hPa,
    /// 3,125 m, 4.0 °C, Td −25.0, 285° 15.4 m/s.</summary>
    [Fact]
    public void Fields_that_touch_are_read_by_columns()
    {
        var sounding = Text.Read(Invented);
        var ground = sounding.Surface;
        Assert.Equal((1013, 93, 305), (ground.Pressure.Hectopascals, ground.Height!.Value.Metres, ground.Wind!.Value.FromDegrees));
        Assert.Equal(8.6, ground.Temperature!.Value.Celsius, tolerance: 1e-9);
        Assert.Equal(4.4, ground.DewPoint!.Value.Celsius, tolerance: 1e-9);
        Assert.Equal(1.5, ground.Wind!.Value.Speed.MetresPerSecond, tolerance: 1e-9);
        var level = sounding.Levels.Single(level => level.Pressure.Hectopascals == 700);
        Assert.Equal(new TimeSpan(0, 8, 12), level.SinceLaunch);
        Assert.Equal(-25.0, level.DewPoint!.Value.Celsius, tolerance: 1e-9);
        Assert.Equal(15.4, level.Wind!.Value.Speed.MetresPerSecond, tolerance: 1e-9);
    }

    [Fact]
    public void Header_facts_are_kept()
    {
        var source = Text.Read(Invented).Source;
        Assert.Equal(new DateTimeOffset(2016, 10, 6, 12, 0, 0, TimeSpan.Zero), source.ValidAt);
        Assert.Equal(new TimeOnly(11, 3), source.LaunchTime);
        Assert.Equal((38.9833, -77.4669), (source.Position!.Value.LatitudeDegrees, source.Position!.Value.LongitudeDegrees));
        Assert.Equal(93, source.Elevation!.Value.Metres);
    }

    [Fact]
    public void Removed_values_are_not_reported_and_winds_without_pressure_are_kept_apart()
    {
        var sounding = Text.Read(Invented);
        Assert.Contains(sounding.Remarks, remark => remark.Code == "values-removed");
        Assert.Equal(1500, Assert.Single(sounding.WindsByHeight).Height.Metres);
    }

    [Fact]
    public void Many_ascents_are_listed_and_chosen_by_number_or_time()
    {
        var bytes = Encoding.ASCII.GetBytes(Invented + "\n" + Invented.Replace("10 06 12 1103", "10 07 00 2303", StringComparison.Ordinal));
        Assert.Equal([6, 7], SoundingReader.Contents(bytes).Select(source => source.ValidAt!.Value.Day));
        Assert.Equal(2, SoundingReader.ReadAll(bytes).Count);
        Assert.Equal(7, SoundingReader.Read(bytes, "x", 1).Source.ValidAt!.Value.Day);
        Assert.Equal(7, SoundingReader.Read(bytes, "x", new DateTimeOffset(2016, 10, 6, 20, 0, 0, TimeSpan.Zero)).Source.ValidAt!.Value.Day);
        Assert.Contains(SoundingReader.Read(bytes).Remarks, remark => remark.Code == "several-ascents" && remark.Message.Contains("2 ascents", StringComparison.Ordinal));
        Assert.Throws<ArgumentOutOfRangeException>(() => SoundingReader.Read(bytes, "x", 2));
    }

    [Fact]
    public void A_shifted_line_is_refused_with_its_line()
    {
        var refusal = Text.Refused(Invented.Replace("20 -9999  88100", "20 -9999   88100x", StringComparison.Ordinal));
        Assert.Equal(("igra-field", 4), (refusal.Code, refusal.Line));
    }

    [Fact]
    public void Fewer_levels_than_announced_are_a_warning() =>
        Assert.Contains(
            Text.Read(Invented.Replace("   8 ncdc", "  99 ncdc", StringComparison.Ordinal)).Remarks,
            remark => remark is { Code: "truncated", Severity: Severity.Warning });
}
