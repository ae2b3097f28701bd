using System.Text;

namespace DayBrief.Soundings.Formats;

/// <summary>Invented forecast profiles of two hours.</summary>
public sealed class ProfileTests
{
    internal const string Csv = """
        # station: model
        # elevation_m: 120
        time_utc,pressure_hpa,temperature_c,specific_humidity_gkg,u_ms,v_ms
        2026-06-21T06:00,1000,14,9,3,-4
        2026-06-21T06:00,950,13,8,3,-4
        2026-06-21T06:00,900,10,7,,
        2026-06-21T06:00,850,7,5,,
        2026-06-21T06:00,700,-2,3,,
        2026-06-21T06:00,500,-18,1,,
        2026-06-21T12:00,1000,23,9,0,-5
        2026-06-21T12:00,950,18,8,0,-5
        2026-06-21T12:00,900,13.5,7,,
        2026-06-21T12:00,850,9,5,,
        2026-06-21T12:00,700,-1,3,,
        2026-06-21T12:00,500,-18,1,,
        """;

    internal const string Json = """
        { "station": "model", "elevationM": 120, "profiles": [
          { "validAt": "2026-06-21T06:00Z", "pressureHpa": [1000, 950, 900, 850, 700, 500], "temperatureC": [14, 13, 10, 7, -2, -18], "windDirectionDeg": [270, 280, null, null, null, null], "windSpeedMs": [5, 6, null, null, null, null] },
          { "validAt": "2026-06-21T12:00Z", "levels": [
            { "pressureHpa": 1000, "temperatureC": 23 }, { "pressureHpa": 950, "temperatureC": 18 }, { "pressureHpa": 900, "temperatureC": 13.5 },
            { "pressureHpa": 850, "temperatureC": 9 }, { "pressureHpa": 700, "temperatureC": -1 }, { "pressureHpa": 500, "temperatureC": -18 } ] } ] }
        """;

    [Theory]
    [InlineData(Csv)]
    [InlineData(Json)]
    public void Several_hours_are_several_ascents(string text)
    {
        var all = SoundingReader.ReadAll(Encoding.UTF8.GetBytes(text));
        Assert.Equal([6, 12], all.Select(sounding => sounding.Source.ValidAt!.Value.Hour));
        Assert.Equal([14, 23], all.Select(sounding => Math.Round(sounding.Surface.Temperature!.Value.Celsius, 9)));
        Assert.All(all, sounding => Assert.Equal(("model", 120), (sounding.Source.Station, sounding.Source.Elevation!.Value.Metres)));
    }

    [Theory]
    [InlineData(Csv)]
    [InlineData(Json)]
    public void The_nearest_hour_is_taken(string text)
    {
        var near = new DateTimeOffset(2026, 6, 21, 10, 0, 0, TimeSpan.Zero);
        Assert.Equal(12, SoundingReader.Read(Encoding.UTF8.GetBytes(text), "x", near).Source.ValidAt!.Value.Hour);
    }

    /// <summary>Components 3 and −4 m/s: 5 m/s from atan(3/4) west of north, 323.13° (a 3-4-5 triangle). Specific humidity
    /// 9 g/kg is a mixing ratio of 9.0817 g/kg; e = w p/(ε + w) = 14.392 hPa and [Bolton1980] eq. 11 gives 12.40 °C.</summary>
    [Fact]
    public void Components_and_specific_humidity_are_converted()
    {
        var level = SoundingReader.Read(Encoding.UTF8.GetBytes(Csv)).Surface;
        Assert.Equal(5, level.Wind!.Value.Speed.MetresPerSecond, tolerance: 1e-9);
        Assert.Equal(323.1301, level.Wind!.Value.FromDegrees, tolerance: 1e-4);
        Assert.Equal(12.40, level.DewPoint!.Value.Celsius, tolerance: 0.01);
    }

    /// <summary>A site at 600 m: 1000 hPa at 110 m lies in the ground.</summary>
    [Fact]
    public void What_a_model_gives_below_the_ground_is_no_air()
    {
        var text = "# elevation_m: 600\ntime_utc,pressure_hpa,height_m,temperature_c\n"
            + string.Concat(new[] { (1000, 110, 20), (950, 550, 16), (940, 640, 15), (900, 1000, 12), (850, 1480, 8), (700, 3050, -3), (500, 5650, -19) }
                .Select(level => $"2026-06-21T12:00,{level.Item1},{level.Item2},{level.Item3}\n"));
        var sounding = Text.Read(text);
        Assert.Equal(940, sounding.Surface.Pressure.Hectopascals);
        Assert.Equal(110, sounding.Levels[0].Height!.Value.Metres);
        Assert.Contains(sounding.Remarks, remark => remark.Code == "below-ground");
    }

    [Fact]
    public void Times_of_single_levels_make_one_ascent()
    {
        var text = "time_utc,pressure_hpa,temperature_c\n"
            + string.Join('\n', Enumerable.Range(0, 10).Select(i => $"2026-06-21T06:0{i}:00,{1000 - (50 * i)},{15 - (3 * i)}"));
        var sounding = Text.Read(text);
        Assert.Equal(10, sounding.Levels.Length);
        Assert.Equal(new DateTimeOffset(2026, 6, 21, 6, 0, 0, TimeSpan.Zero), sounding.Source.ValidAt);
    }

    [Fact]
    public void A_time_without_a_zone_is_refused_by_line_and_column()
    {
        var refusal = Text.Refused(Csv.Replace("time_utc", "time", StringComparison.Ordinal));
        Assert.Equal(("time-invalid", 4, "time"), (refusal.Code, refusal.Line, refusal.Field));
    }

    [Fact]
    public void Unequal_columns_are_refused_by_path()
    {
        var refusal = Text.Refused(Json.Replace("[1000, 950,", "[950,", StringComparison.Ordinal));
        Assert.Equal(("columns-unequal", "profiles[0].pressureHpa"), (refusal.Code, refusal.Field));
    }

    [Fact]
    public void A_wrong_value_in_a_later_profile_is_refused_by_path()
    {
        var refusal = Text.Refused(Json.Replace("\"temperatureC\": 13.5", "\"temperatureC\": \"hot\"", StringComparison.Ordinal));
        Assert.Equal("profiles[1].levels[2].temperatureC", refusal.Field);
    }
}
