namespace DayBrief.Soundings.Formats.Csv;

/// <summary>Invented six-level ascents; every number expected is one of those written in the text, or its unit changed
/// by an exact factor [SI].</summary>
public sealed class CsvSoundingTests
{
    private static readonly double[] Pressures = [1000, 950, 900, 850, 700, 500];

    [Theory]
    [InlineData("pressure_hpa,temperature_c")]
    [InlineData("Pressure [hPa],Temperature [°C]")]
    [InlineData("p (hPa),T (degC)")]
    [InlineData("p_hPa(computed),T_C (computed)")]
    [InlineData("pressureHpa,temperatureC")]
    [InlineData("PRES_mb,TEMP_C")]
    [InlineData("\"pressure, hPa\",\"temperature, C\"")]
    [InlineData("pres_hPa,tmpc")]
    public void Headers_may_be_spelled_in_many_ways(string header)
    {
        var sounding = Text.Read(header + "\n" + Rows(","));
        Assert.Equal(Pressures, sounding.Levels.Select(level => level.Pressure.Hectopascals));
        Assert.Equal(15.5, sounding.Surface.Temperature!.Value.Celsius, tolerance: 1e-9);
    }

    [Theory]
    [InlineData(';')]
    [InlineData('\t')]
    public void Decimal_commas_are_read_between_semicolons_or_tabs(char delimiter)
    {
        var text = $"pressure_hpa{delimiter}temperature_c\r\n" + Rows(delimiter.ToString()).Replace('.', ',').Replace("\n", "\r\n", StringComparison.Ordinal);
        Assert.Equal(15.5, Text.Read(text).Surface.Temperature!.Value.Celsius, tolerance: 1e-9);
    }

    [Fact]
    public void Columns_may_stand_in_any_order_with_others_between()
    {
        var sounding = Text.Read("wind_speed_kmh;note;temperature_k;wind_dir_deg;pressure_pa;height_ft\n"
            + "36;\"a \"\"b\"\"; c\";288.15;270;100000;1000\n" + string.Join('\n', Pressures.Skip(1).Select(p => $";;{280};;{100 * p};")));
        Assert.Equal(15, sounding.Surface.Temperature!.Value.Celsius, tolerance: 1e-9);
        Assert.Equal(10, sounding.Surface.Wind!.Value.Speed.MetresPerSecond, tolerance: 1e-9);
        Assert.Equal(304.8, sounding.Surface.Height!.Value.Metres, tolerance: 1e-9);
        Assert.Contains(sounding.Remarks, remark => remark.Code == "columns-ignored" && remark.Message.Contains("note", StringComparison.Ordinal));
    }

    [Fact]
    public void Facts_before_the_header_are_read()
    {
        var source = Text.Read("# station: 10999\n# valid: 2026-06-21T06:00Z\n# latitude: 48.5\n# longitude: 9.25\n# elevation_m: 350\n"
            + "pressure_hpa,temperature_c\n" + Rows(",")).Source;
        Assert.Equal("10999", source.Station);
        Assert.Equal(new DateTimeOffset(2026, 6, 21, 6, 0, 0, TimeSpan.Zero), source.ValidAt);
        Assert.Equal(48.5, source.Position!.Value.LatitudeDegrees);
        Assert.Equal(350, source.Elevation!.Value.Metres);
    }

    [Fact]
    public void A_row_of_units_below_the_header_is_taken() =>
        Assert.Equal(6, Text.Read("pressure,temperature\nhPa,°C\n" + Rows(",")).Levels.Length);

    /// <summary>Dew point from 50 % at 20 °C is 9.3 °C: [MetPy] test value of dewpoint_from_relative_humidity is 9.26 °C
    /// from the same formula [Bolton1980]; half of the last figure is allowed.</summary>
    [Fact]
    public void Humidity_and_depression_become_dew_points()
    {
        var text = "pressure_hpa,temperature_c,rh_pct\n1000,20,50\n950,17,\n900,14,0\n850,11,100\n700,0,40\n500,-20,30\n";
        var levels = Text.Read(text).Levels;
        Assert.Equal(9.3, levels[0].DewPoint!.Value.Celsius, tolerance: 0.05);
        Assert.Null(levels[1].DewPoint);
        Assert.Null(levels[2].DewPoint);
        Assert.Equal(levels[3].Temperature, levels[3].DewPoint);
        var depression = Text.Read("pressure_hpa,temperature_c,dew_point_depression_c\n1000,20,5.5\n950,17,1\n900,14,1\n850,11,1\n700,0,1\n500,-20,1\n");
        Assert.Equal(14.5, depression.Surface.DewPoint!.Value.Celsius, tolerance: 1e-9);
    }

    [Theory]
    [InlineData("pressure_hpa,temperature_furlongs", "unit-unknown", "temperature_furlongs")]
    public void A_column_without_a_clear_unit_is_refused_by_name(string header, string code, string field)
    {
        var refusal = Text.Refused(header + "\n" + Rows(","));
        Assert.Equal((code, field, 1), (refusal.Code, refusal.Field, refusal.Line));
    }

    [Fact]
    public void A_cell_that_is_no_number_is_refused_with_line_and_column()
    {
        var refusal = Text.Refused("pressure_hpa,temperature_c\n" + Rows(",").Replace("900,8.5", "900,warm", StringComparison.Ordinal));
        Assert.Equal(("value-not-a-number", 4, "temperature_c"), (refusal.Code, refusal.Line, refusal.Field));
    }

    [Fact]
    public void Decimal_commas_between_commas_are_refused_with_the_way_out()
    {
        var refusal = Text.Refused("pressure_hpa,temperature_c\n1000,15,5\n950,12,5\n");
        Assert.Equal(("too-many-cells", 2), (refusal.Code, refusal.Line));
        Assert.Contains("semicolons", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Rows_below_ground_with_a_height_only_are_kept()
    {
        var sounding = Text.Read("pressure_hpa,height_m,temperature_c\n1013,10,\n" + Rows(",").Replace(",", ",,", StringComparison.Ordinal));
        Assert.Equal(10, sounding.Levels[0].Height!.Value.Metres);
        Assert.Equal(1000, sounding.Surface.Pressure.Hectopascals);
    }

    [Fact]
    public void An_open_quotation_mark_gives_one_answer() =>
        Assert.NotEmpty(Text.Refused("pressure_hpa,temperature_c\n\"1000,15\n950,12\n").Message);

    private static string Rows(string delimiter)
    {
        double[] celsius = [15.5, 12, 8.5, 5, -4, -20.5];
        return string.Join('\n', Pressures.Zip(celsius, (p, t) => FormattableString.Invariant($"{p}{delimiter}{t}"))) + "\n";
    }
}
