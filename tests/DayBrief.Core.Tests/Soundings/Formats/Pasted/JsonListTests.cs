namespace DayBrief.Soundings.Formats.Pasted;

/// <summary>JSON lists of levels under the names that tables use.</summary>
public sealed class JsonListTests
{
    internal const string Levels = """
        [{"pres":978.2,"hght":350,"temp":12.5,"dwpt":9.0,"drct":270,"sknt":4},
         {"pres":950,"hght":598,"temp":12.9,"dwpt":7.0,"drct":null,"sknt":NaN},
         {"pres":925,"hght":824,"temp":11.6,"dwpt":NaN,"drct":285,"sknt":12},
         {"pres":900,"hght":1057,"temp":9.5,"dwpt":3.8},
         {"pres":850,"hght":1536,"temp":5.2,"dwpt":1.5,"drct":290,"sknt":18},
         {"pres":700,"hght":3094,"temp":-3.4,"dwpt":-14.0,"drct":300,"sknt":25}]
        """;

    [Theory]
    [InlineData("")]
    [InlineData("levels")]
    [InlineData("profile")]
    public void Short_names_NaN_and_null_are_read(string name)
    {
        var sounding = Text.Read(name.Length == 0 ? Levels : $"{{\"station\":\"99999\",\"time\":\"2026-06-21T06:00Z\",\"elevation\":350,\"lat\":48.5,\"lon\":9.25,\"{name}\":{Levels}}}");
        Assert.Equal([12.5, 12.9, 11.6, 9.5, 5.2, -3.4], sounding.Levels.Select(level => Math.Round(level.Temperature!.Value.Celsius, 6)));
        Assert.Equal([4.0, null, 12, null, 18, 25], sounding.Levels.Select(level => level.Wind is { } wind ? Math.Round(wind.Speed.Knots, 6) : (double?)null));
        Assert.Null(sounding.Levels[2].DewPoint);
        Assert.Equal(name.Length == 0 ? null : "99999", sounding.Source.Station);
    }

    [Fact]
    public void Columns_and_a_level_a_line_are_read()
    {
        const string columns = "{\"station\":\"99999\",\"pressure\":[978.2,950,925,900,850,700,500],\"height\":[350,598,824,1057,1536,3094,5700],\"temperature\":[12.5,12.9,11.6,9.5,5.2,-3.4,-21.5],\"dewpoint\":[9,7,null,3.8,1.5,-14,-40]}";
        var sounding = Text.Read(columns);
        Assert.Equal((7, 12.5, 350.0), (sounding.Levels.Length, Math.Round(sounding.Surface.Temperature!.Value.Celsius, 6), sounding.Surface.Height!.Value.Metres));
        Assert.Equal("columns-unequal", Text.Refused(columns.Replace("[9,7,", "[9,", StringComparison.Ordinal)).Code);
        var lines = Levels.Trim('[', ']', ' ', '\n').Replace("},", "}", StringComparison.Ordinal);
        Assert.Equal(6, Text.Read(lines).Levels.Length);
    }

    [Fact]
    public void Relative_humidity_gives_the_dew_point_under_both_kinds_of_names()
    {
        foreach (var name in new[] { "relativeHumidityPct", "rh_pct", "RELH" })
        {
            var text = "{\"levels\":[" + string.Join(',', new[] { (1000, 15), (950, 12), (900, 9), (850, 6), (700, -3), (500, -20) }
                .Select(level => $"{{\"pressureHpa\":{level.Item1},\"temperatureC\":{level.Item2},\"{name}\":50}}")) + "]}";

            // 15 °C and 50 %: dew point 4.7 °C, [Bolton1980] eqs. 10 and 11.
            Assert.Equal(4.66, Text.Read(text).Surface.DewPoint!.Value.Celsius, tolerance: 0.02);
        }
    }

    [Fact]
    public void A_value_that_is_none_is_refused_with_its_path()
    {
        var refusal = Text.Refused(Levels.Replace("5.2", "\"warm\"", StringComparison.Ordinal));
        Assert.Equal(("value-not-a-number", "levels[4].temp"), (refusal.Code, refusal.Field));
    }
}
