using System.Globalization;
using System.Text;

namespace DayBrief.Soundings.Formats.Pasted;

/// <summary>CSV as archives and ground stations write it: times without a zone, positions, names without units.</summary>
public sealed class ArchiveCsvTests
{
    internal const string Archive = """
        time,longitude,latitude,pressure_hPa,geopotential height_m,temperature_C,dew point temperature_C,ice point temperature_C,relative humidity_%,humidity wrt ice_%,mixing ratio_g/kg,wind direction_degree,wind speed_m/s
        2026-06-21 05:04:00,9.2500,48.5000,978.2,350,12.5,9.0,9.0,79,79,7.44,270,2.1
        2026-06-21 05:05:00,9.2510,48.5001,950.0,598,12.9,7.0,7.0,67,67,6.66,280,4.0
        2026-06-21 05:05:50,9.2520,48.5002,925.0,824,11.6,5.1,5.1,64,64,6.00,285,6.2
        2026-06-21 05:06:40,9.2540,48.5003,900.0,1057,9.5,3.8,3.8,67,67,5.62,,
        2026-06-21 05:08:30,9.2600,48.5010,850.0,1536,5.2,1.5,1.5,77,77,5.04,290,9.3
        2026-06-21 05:14:00,9.3000,48.5100,700.0,3094,-3.4,-14.0,-12.5,44,45,1.84,300,12.9
        """;

    [Fact]
    public void An_archive_table_with_times_without_a_zone_is_read_and_says_so()
    {
        var sounding = Text.Read(Archive);
        Assert.Equal(6, sounding.Levels.Length);
        Assert.Equal(new DateTimeOffset(2026, 6, 21, 5, 4, 0, TimeSpan.Zero), sounding.Source.ValidAt);
        Assert.Equal(48.5, sounding.Source.Position!.Value.LatitudeDegrees, tolerance: 1e-9);
        Assert.Equal(9.0, sounding.Surface.DewPoint!.Value.Celsius, tolerance: 1e-9);
        Assert.Equal(TimeSpan.FromMinutes(10), sounding.Levels[^1].SinceLaunch);
        Assert.Contains(sounding.Remarks, remark => remark.Code == "time-zone-assumed");
    }

    [Theory]
    [InlineData("pressure,height,temperature,dewpoint", "hPa m C C")]
    [InlineData("PRES,HGHT,TEMP,DWPT", "hPa m C C")]
    [InlineData("p,z,t,td", "hPa m C C")]
    [InlineData("p,z,t,td", "Pa m K K")]
    [InlineData("p,z,t,td", "hPa ft C C")]
    [InlineData("p,z,t,td", "hPa m F F")]
    [InlineData("p,z,t,td", "kPa km K K")]
    public void Units_are_told_by_values_that_leave_one_reading(string header, string units)
    {
        var u = units.Split(' ');
        var sounding = Text.Read(header + "\n" + Rows(u[0], u[1], u[2]));
        Assert.Equal(1000, sounding.Surface.Pressure.Hectopascals, tolerance: 1e-3);
        Assert.Equal(15, sounding.Surface.Temperature!.Value.Celsius, tolerance: 0.01);
        Assert.Equal(5, sounding.Surface.DewPoint!.Value.Celsius, tolerance: 0.01);
        Assert.Equal(110, sounding.Surface.Height!.Value.Metres, tolerance: 1);
        Assert.Equal(header.StartsWith("PRES", StringComparison.Ordinal), sounding.Remarks.All(remark => remark.Code != "units-from-values"));
    }

    /// <summary>Six levels over 1 km cannot tell °C from °F; a wind speed never tells its unit.</summary>
    [Theory]
    [InlineData("p,t\n1000,15\n990,14\n980,13.5\n970,13\n960,12\n950,11\n", "t")]
    [InlineData("pressure_hpa,temperature_c,wind_dir,wind_speed\n1000,15,270,5\n950,12,270,5\n900,9,270,5\n850,6,270,5\n700,-3,270,5\n500,-20,270,5\n", "wind_speed")]
    public void What_the_values_leave_open_is_asked_for(string text, string field)
    {
        var refusal = Text.Refused(text);
        Assert.Equal(("unit-missing", field), (refusal.Code, refusal.Field));
    }

    [Fact]
    public void A_receivers_record_gets_pressures_from_heights_and_says_so()
    {
        var text = new StringBuilder("timestamp,serial,lat,lon,alt,heading,temp,humidity\n");
        for (var i = -5; i < 1400; i++)
        {
            // On the ground, 5 m/s up to 6,000 m, then falling at 20 m/s.
            var height = i < 0 ? 350 : i < 1130 ? 350 + (5 * i) : 6000 - (20 * (i - 1130));
            text.Append(CultureInfo.InvariantCulture, $"2026-06-21T05:{(i + 5) / 60 % 60:00}:{(i + 5) % 60:00}.000Z,X1,48.5,9.25,{height},90,{15 - (0.0065 * height):0.0},60\n");
        }

        var sounding = Text.Read(text.ToString());
        Assert.Equal(350, sounding.Surface.Height!.Value.Metres, tolerance: 1e-6);
        Assert.InRange(sounding.Levels[^1].Height!.Value.Metres, 5900, 6000);
        Assert.All(sounding.Levels.Zip(sounding.Levels.Skip(1)), pair => Assert.True(pair.Second.Height > pair.First.Height));

        // ICAO standard atmosphere at 5,000 m: 540.2 hPa [ICAO7488]; the air here is drier by nothing and colder by nothing.
        var fiveKm = sounding.Levels.MinBy(level => Math.Abs(level.Height!.Value.Metres - 5000))!;
        Assert.Equal(540.2, fiveKm.Pressure.Hectopascals, tolerance: 2);
        Assert.Superset(new HashSet<string> { "descent-left-out", "pressure-from-height", "standard-pressure-assumed", "units-from-values" }, sounding.Remarks.Select(remark => remark.Code).ToHashSet());
    }

    [Theory]
    [InlineData("level,gph,t,td", 978.2)]
    [InlineData("lev,gph,t,td", 978.2)]
    public void A_level_is_its_pressure_where_no_other_is_named(string header, double hpa)
    {
        var sounding = Text.Read(header + "\n978.2,350,12.5,9\n950,598,12.9,7\n925,824,11.6,5\n900,1057,9.5,3.8\n850,1536,5.2,1.5\n700,3094,-3.4,-14\n500,5700,-21.5,-40\n");
        Assert.Equal(hpa, sounding.Surface.Pressure.Hectopascals, tolerance: 1e-6);
        var numbered = Text.Read("level,pres,hght,temp,dwpt\n1,978.2,350,12.5,9\n2,950,598,12.9,7\n3,925,824,11.6,5\n4,900,1057,9.5,3.8\n5,850,1536,5.2,1.5\n6,700,3094,-3.4,-14\n");
        Assert.Equal(hpa, numbered.Surface.Pressure.Hectopascals, tolerance: 1e-6);
    }

    /// <summary>A balloon that moves eastwards shows a wind from the west.</summary>
    [Theory]
    [InlineData("vel_h_ms", 270.0)]
    [InlineData("vel_h", null)]
    public void Where_the_balloon_moves_to_is_where_the_wind_does_not_come_from(string speed, double? from)
    {
        var sounding = Text.Read($"pressure_hpa,temp_c,heading,{speed}\n978,12.5,90,5\n950,12.9,90,6\n925,11.6,90,7\n900,9.5,90,8\n850,5.2,90,9\n700,-3.4,90,9\n");
        Assert.Equal(from, sounding.Surface.Wind?.FromDegrees);
        Assert.Equal(from is null ? 0 : 5, sounding.Surface.Wind?.Speed.MetresPerSecond ?? 0, tolerance: 1e-9);
        Assert.Equal(from is null, sounding.Remarks.Any(remark => remark.Code == "columns-ignored"));
        Assert.DoesNotContain(sounding.Remarks, remark => remark.Code == "wind-incomplete");
    }

    [Fact]
    public void Empty_columns_need_no_unit_and_minus_one_is_no_pressure()
    {
        var sounding = Text.Read("alt_m,temp_c,pressure,dewpoint,speed\n350,12.5,-1,,\n598,12.9,-1,,\n824,11.6,-1,,\n1057,9.5,-1,,\n1536,5.2,-1,,\n3094,-3.4,-1,,\n");
        Assert.Contains(sounding.Remarks, remark => remark.Code == "pressure-from-height");
        Assert.Equal(6, sounding.Levels.Length);
    }

    [Theory]
    [InlineData("350;598;824;1.057;1.536;3.094")]
    [InlineData("0.350;0.598;0.824;1.057;1.536;3.094")]
    [InlineData("350;598;824;1'057;1'536;3'094")]
    public void Thousands_in_heights_are_not_decimals(string heights)
    {
        var h = heights.Split(';');
        var text = "pressure_hpa;height_m;temperature_c\n" + string.Join('\n', new[] { "978,2", "950", "925", "900", "850", "700" }.Select((p, i) => $"{p};{h[i]};{10 - i},5"));
        if (h[0] == "0.350")
        {
            // All figures below a hundred metres: only kilometres could be meant, or thousands.
            Assert.Equal(350, Text.Read(text).Surface.Height!.Value.Metres, tolerance: 1e-6);
            return;
        }

        var sounding = Text.Read(text);
        Assert.Equal([350, 598, 824, 1057, 1536, 3094], sounding.Levels.Select(level => Math.Round(level.Height!.Value.Metres, 6)));
        Assert.Contains(sounding.Remarks, remark => remark.Code == "thousands-parted");
    }

    [Fact]
    public void Decimals_of_three_figures_stay_decimals()
    {
        var sounding = Text.Read("pressure_hpa,height_m,temperature_c\n978.215,350.123,10\n950.111,598.456,9\n925.002,824.789,8\n900.001,1057.123,7\n850.5,1536.5,5\n700,3094,-3\n");
        Assert.Equal(350.123, sounding.Surface.Height!.Value.Metres, tolerance: 1e-9);
    }

    [Theory]
    [InlineData("-9999.00")]
    [InlineData("99999")]
    [InlineData("-999.90")]
    [InlineData("9999.0")]
    [InlineData("1e20")]
    [InlineData("N/A")]
    [InlineData("None")]
    public void Fillers_are_not_values(string filler)
    {
        var sounding = Text.Read(Archive.Replace("1.5,1.5,77,77,5.04,290,9.3", $"{filler},{filler},{filler},{filler},{filler},{filler},{filler}", StringComparison.Ordinal));
        var level = Assert.Single(sounding.Levels, level => level.Pressure.Hectopascals is > 849 and < 851);
        Assert.Null(level.DewPoint);
        Assert.Null(level.Wind);
    }

    [Fact]
    public void A_source_line_and_repeated_headers_are_passed_over()
    {
        var sounding = Text.Read(Archive + "\nSource: an archive, free to use\n\n" + Archive.Split('\n')[0]);
        Assert.Equal(6, sounding.Levels.Length);
        Assert.Contains(sounding.Remarks, remark => remark.Code == "lines-passed-over");
    }

    [Fact]
    public void A_table_with_bars_is_read()
    {
        var sounding = Text.Read("| pressure_hpa | temperature_c | rh_pct |\n|---|---|---|\n| 1000 | 15 | 60 |\n| 950 | 12 | 60 |\n| 900 | 9 | 60 |\n| 850 | 6 | 60 |\n| 700 | -3 | 60 |\n| 500 | -20 | 60 |\n");
        Assert.Equal(6, sounding.Levels.Length);
    }

    [Fact]
    public void A_table_of_a_page_is_read()
    {
        var rows = Archive.Split('\n').Select(line => "<tr>\n" + string.Concat(line.Split(',').Select(cell => $"  <td>{cell}</td>\n")) + "</tr>");
        Assert.Equal(6, Text.Read($"<html><body><table>\n{string.Join('\n', rows)}\n</table></body></html>").Levels.Length);
    }

    private static string Rows(string pressure, string height, string temperature)
    {
        (double P, double Z, double T)[] levels = [(1000, 110, 15), (925, 770, 10.5), (850, 1470, 6), (700, 3020, -4), (600, 4210, -12), (500, 5580, -21), (400, 7190, -32)];
        return string.Join('\n', levels.Select(level => FormattableString.Invariant(
            $"{In(level.P, pressure)},{In(level.Z, height)},{In(level.T, temperature):0.###},{In(level.T - 10, temperature):0.###}"))) + "\n";
    }

    private static double In(double value, string unit) => unit switch
    {
        "Pa" => value * 100,
        "kPa" => value / 10,
        "ft" => value / 0.3048,
        "km" => value / 1000,
        "K" => value + 273.15,
        "F" => (value * 1.8) + 32,
        _ => value,
    };
}
