namespace DayBrief.Soundings.Formats.Bufr;

/// <summary>What several messages about one launch make; the numbers are those that <see cref="BufrSamples"/> writes.</summary>
public sealed class BufrMergeTests
{
    [Fact]
    public void Winds_by_pressure_join_the_ascent_of_the_same_station_and_hour()
    {
        var sounding = SoundingReader.Read((byte[])[.. BufrSamples.WindsByPressure(), .. BufrSamples.Ascent()]);
        Assert.Equal(8, sounding.Levels.Length);
        var both = sounding.Levels.Single(level => level.Pressure.Hectopascals == 910);
        Assert.Equal((240, 5), (both.Wind!.Value.FromDegrees, both.Wind!.Value.Speed.MetresPerSecond));
        Assert.Equal(11.35, both.Temperature!.Value.Celsius, tolerance: 1e-9);
        Assert.Null(sounding.Levels.Single(level => level.Pressure.Hectopascals == 800).Temperature);
        Assert.Contains(sounding.Remarks, remark => remark.Code == "winds-merged");
    }

    [Fact]
    public void Winds_by_height_are_kept_apart_from_the_levels()
    {
        var sounding = SoundingReader.Read((byte[])[.. BufrSamples.Ascent(), .. BufrSamples.WindsByHeight()]);
        Assert.Equal(7, sounding.Levels.Length);
        Assert.Equal([900.0, 2000], sounding.WindsByHeight.Select(wind => wind.Height.Metres));
    }

    [Fact]
    public void A_wind_report_alone_is_no_ascent() =>
        Assert.Equal("wind-only", Text.Refused(BufrSamples.WindsByPressure()).Code);

    [Fact]
    public void Station_launch_and_place_are_kept()
    {
        var source = SoundingReader.Read(BufrSamples.Ascent()).Source;
        Assert.Equal(("10999", new DateTimeOffset(2026, 6, 21, 6, 0, 0, TimeSpan.Zero)), (source.Station, source.ValidAt));
        Assert.Equal(431, source.Elevation!.Value.Metres, tolerance: 1e-9);
    }
}
