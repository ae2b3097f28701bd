namespace DayBrief.Soundings.Formats.Typed;

/// <summary>An invented ascent, typed.</summary>
public sealed class TypedSoundingTests
{
    private static readonly TypedSounding Six = new()
    {
        Station = "somewhere",
        ElevationM = 300,
        Levels =
        [
            new() { PressureHpa = 980, TemperatureC = 15, DewPointC = 10, WindDirectionDeg = 270, WindSpeedKt = 10 },
            new() { PressureHpa = 950, TemperatureC = 13, DewPointDepressionC = 4, WindDirectionDeg = 280, WindSpeedMs = 5 },
            new() { PressureHpa = 900, TemperatureC = 9 },
            new() { PressureHpa = 850, TemperatureC = 6 },
            new() { PressureHpa = 700, TemperatureC = -3 },
            new() { PressureHpa = 500, TemperatureC = -20 },
        ],
    };

    [Fact]
    public void Six_levels_are_an_ascent()
    {
        var sounding = SoundingReader.Read(Six);
        Assert.Equal("Typed levels", sounding.Source.Format);
        Assert.Equal(10, sounding.Surface.Wind!.Value.Speed.Knots, tolerance: 1e-9);
        Assert.Equal(9, sounding.Levels[1].DewPoint!.Value.Celsius, tolerance: 1e-9);
        Assert.Equal(5, sounding.Levels[1].Wind!.Value.Speed.MetresPerSecond);
    }

    [Fact]
    public void Five_levels_are_refused() =>
        Assert.Equal("too-few-levels", Refused(Six with { Levels = [.. Six.Levels.Take(5)] }).Code);

    [Fact]
    public void An_impossible_value_is_refused_by_its_field()
    {
        var levels = Six.Levels.ToArray();
        levels[3] = levels[3] with { TemperatureC = 600 };
        Assert.Equal(("value-impossible", "levels[3].temperatureC"), Named(Refused(Six with { Levels = levels })));
        levels[3] = levels[3] with { TemperatureC = double.NaN };
        Assert.Equal(("value-impossible", "levels[3].temperatureC"), Named(Refused(Six with { Levels = levels })));
        levels[3] = levels[3] with { TemperatureC = 6, DewPointDepressionC = -2 };
        Assert.Equal(("dew-point-above-temperature", "levels[3].dewPointDepressionC"), Named(Refused(Six with { Levels = levels })));
    }

    [Fact]
    public void A_level_without_pressure_and_height_is_refused() =>
        Assert.Equal(
            ("level-without-place", "levels[1].pressureHpa"),
            Named(Refused(Six with { Levels = [Six.Levels[0], new() { TemperatureC = 3 }, .. Six.Levels.Skip(1)] })));

    /// <summary>[ICAO7488]: the standard atmosphere is 1013.25 hPa at 0 m, 898.75 at 1,000 m, 795.0 at 2,000 m, 701.1 at
    /// 3,000 m, 616.4 at 4,000 m, 540.2 at 5,000 m (geopotential; values of the published table to one decimal, from
    /// memory). Its temperatures given, the hypsometric equation must return its pressures, to 0.1 hPa because the mean
    /// temperature of a layer is taken as the mean of its ends.</summary>
    [Fact]
    public void Heights_alone_get_the_pressures_of_the_standard_atmosphere()
    {
        double[] table = [1013.25, 898.75, 795.0, 701.1, 616.4, 540.2];
        var levels = Enumerable.Range(0, 6).Select(km => new TypedLevel { HeightM = 1000 * km, TemperatureC = 15 - (6.5 * km) });
        var sounding = SoundingReader.Read(new TypedSounding { ElevationM = 0, Levels = [.. levels] });
        for (var i = 0; i < table.Length; i++)
        {
            Assert.Equal(table[i], sounding.Levels[i].Pressure.Hectopascals, tolerance: 0.1);
        }

        Assert.Contains(sounding.Remarks, remark => remark is { Code: "standard-pressure-assumed", Severity: Severity.Warning });
    }

    [Fact]
    public void A_given_ground_pressure_is_used_without_a_warning()
    {
        var levels = Enumerable.Range(0, 6).Select(i => new TypedLevel { HeightM = 300 + (500 * i), TemperatureC = 15 - (3 * i) });
        var sounding = SoundingReader.Read(new TypedSounding { ElevationM = 300, SurfacePressureHpa = 985, Levels = [.. levels] });
        Assert.Equal(985, sounding.Surface.Pressure.Hectopascals, tolerance: 1e-9);
        Assert.DoesNotContain(sounding.Remarks, remark => remark.Code == "standard-pressure-assumed");
    }

    /// <summary>QNH 1013.25 is the standard atmosphere itself: 898.75 hPa at 1,000 m [ICAO7488].</summary>
    [Fact]
    public void QNH_and_elevation_give_the_ground_pressure()
    {
        var levels = Enumerable.Range(0, 6).Select(i => new TypedLevel { HeightM = 1000 + (500 * i), TemperatureC = 8.5 - (3 * i) });
        var sounding = SoundingReader.Read(new TypedSounding { ElevationM = 1000, QnhHpa = 1013.25, Levels = [.. levels] });
        Assert.Equal(898.75, sounding.Surface.Pressure.Hectopascals, tolerance: 0.05);
    }

    [Fact]
    public void The_same_as_JSON_is_the_same_ascent()
    {
        const string json = """
            { "station": "somewhere", "elevationM": 300, "levels": [
              { "pressureHpa": 980, "temperatureC": 15, "dewPointC": 10, "windDirectionDeg": 270, "windSpeedKt": 10 },
              { "pressureHpa": 950, "temperatureC": 13, "dewPointDepressionC": 4, "windDirectionDeg": 280, "windSpeedMs": 5 },
              { "pressureHpa": 900, "temperatureC": 9, "dewPointC": null }, { "pressureHpa": 850, "temperatureC": 6 },
              { "pressureHpa": 700, "temperatureC": -3 }, { "pressureHpa": 500, "temperatureC": -20 } ] }
            """;
        var sounding = Text.Read(json);
        Assert.Equal("JSON", sounding.Source.Format);
        Assert.Equal(SoundingReader.Read(Six).Levels, sounding.Levels);
    }

    [Theory]
    [InlineData("{\"levels\":[{\"pressureHpa\":980,\"temperatureC\":\"warm\"}]}", "field-invalid", "levels[0].temperatureC")]
    [InlineData("{\"levels\":[5]}", "field-invalid", "levels[0]")]
    [InlineData("{\"levels\":[{\"pressure\":980,\"temperature\":15}]}", "field-unknown", "levels[0].pressure")]
    [InlineData("{\"levelz\":[]}", "levels-missing", "levels")]
    [InlineData("{\"validAt\":\"yesterday\",\"levels\":[]}", "field-invalid", "validAt")]
    public void Wrong_JSON_is_refused_by_field(string json, string code, string field) =>
        Assert.Equal((code, field), Named(Text.Refused(json)));

    [Fact]
    public void JSON_that_is_none_is_refused_with_its_line()
    {
        var refusal = Text.Refused("{\n\"levels\": [\n{ oops }]}");
        Assert.Equal(("json-invalid", 3), (refusal.Code, refusal.Line));
    }

    private static Refusal Refused(TypedSounding typed) =>
        Assert.Single(Assert.Throws<InvalidSoundingException>(() => SoundingReader.Read(typed)).Refusals);

    private static (string, string?) Named(Refusal refusal) => (refusal.Code, refusal.Field);
}
