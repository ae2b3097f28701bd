using System.Text;
using DayBrief.House;
using DayBrief.Soundings;
using DayBrief.Soundings.Formats.Hourly;
using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>Air that changes through the day.</summary>
public sealed class AirByHourTests
{
    private static readonly DateOnly June = new(2026, 6, 21);

    /// <summary>Published pairs: with the afternoon ascent as the air aloft the error at all three sites is less than with the
    /// morning's alone.</summary>
    [Theory]
    [InlineData("SGP97")]
    [InlineData("KNKX")]
    [InlineData("USKK")]
    public void True_air_aloft_makes_the_depth_truer(string site)
    {
        Repository.Shared("cases", "pairs");
        var pairs = Cases.Pairs.Value.Where(pair => pair.Site == site).ToArray();
        double Error(Cases.Pair pair, bool later) => Math.Abs(pair.DepthOf(pair.Inputs.Compute(pair.Inputs.Given with
        {
            EnsembleSize = 0,
            Air = later ? [pair.Inputs.Afternoon] : [],
        })) - pair.ObservedM);
        Assert.True(pairs.Average(pair => Error(pair, later: true)) < pairs.Average(pair => Error(pair, later: false)));
    }

    /// <summary>By definition: profiles that do not change change nothing but the sinking, which is then theirs, none.</summary>
    [Fact]
    public void Air_that_does_not_change_changes_nothing()
    {
        var morning = ConvectiveDayTests.Morning(Cases.Utc("2026-06-21T03:00Z"));
        var later = morning.With(morning.Source with { ValidAt = Cases.Utc("2026-06-21T15:00Z") });
        var without = Compute(morning, new() { DivergencePerSecond = 0, EnsembleSize = 0 });
        var with = Compute(morning, new() { DivergencePerSecond = 0, EnsembleSize = 0, Air = [later] });
        Assert.Equal(without.MaxDepth!.Value.Metres, with.MaxDepth!.Value.Metres, tolerance: 1);
        Assert.Contains(with.Cautions, caution => caution.Code == "air-by-hour");
    }

    /// <summary>Physics: air aloft that warms by 4 K by the afternoon stops thermals lower.</summary>
    [Fact]
    public void Warmer_air_aloft_stops_thermals_lower()
    {
        var morning = ConvectiveDayTests.Morning(Cases.Utc("2026-06-21T03:00Z"));
        var warm = new Sounding
        {
            Source = morning.Source with { ValidAt = Cases.Utc("2026-06-21T12:00Z") },
            Levels = [.. morning.Levels.Select(level => level.Pressure.Hectopascals < 930
                ? level with { Temperature = level.Temperature!.Value + TemperatureDifference.FromKelvins(4) }
                : level)],
        };
        Assert.True(Compute(morning, new() { EnsembleSize = 0, Air = [warm] }).MaxDepth!.Value.Metres
            < Compute(morning, new() { EnsembleSize = 0 }).MaxDepth!.Value.Metres - 200);
    }

    /// <summary>By definition of the form: one array a variable and level, an array of hours; units as told beside it.</summary>
    [Fact]
    public void Arrays_by_variable_and_level_are_read_with_their_units_and_hours()
    {
        var read = HourlyProfiles.Read(
            Encoding.UTF8.GetBytes("""
            {"utc_offset_seconds":7200,"elevation":400,"hourly_units":{"temperature_850hPa":"K","wind_speed_850hPa":"km/h"},
             "hourly":{"time":["2026-06-21T06:00","2026-06-21T07:00"],"surface_pressure":[965,966],"temperature_2m":[12,13],"dew_point_2m":[9,9],
             "temperature_1000hPa":[14,14],"temperature_850hPa":[281.15,282.15],"relative_humidity_850hPa":[100,50],"wind_speed_850hPa":[36,36],"wind_direction_850hPa":[270,360],
             "temperature_700hPa":[-1,null],"temperature_500hPa":[-15,-15]}}
            """),
            "air.json",
            Altitude.FromMetres(0));
        Assert.Equal(2, read!.Count);
        Assert.Equal(Cases.Utc("2026-06-21T04:00Z"), read[0].Source.ValidAt);
        Assert.Equal([965, 850, 700, 500], read[0].Levels.Select(level => level.Pressure.Hectopascals));
        Assert.Equal([966, 850, 500], read[1].Levels.Select(level => level.Pressure.Hectopascals));
        var level = read[0].Levels[1];
        Assert.Equal(8, level.Temperature!.Value.Celsius, tolerance: 1e-9);
        Assert.Equal(8, level.DewPoint!.Value.Celsius, tolerance: 1e-9);
        Assert.Equal(10, level.Wind!.Value.Speed.MetresPerSecond, tolerance: 1e-9);
    }

    [Theory]
    [InlineData("""{"time":["x"],"temperature_850hPa":[1],"temperature_700hPa":[1],"temperature_500hPa":[1]}""", "hour-invalid")]
    [InlineData("""{"time":["2026-06-21T06:00Z"],"temperature_850hPa":[1,2]}""", "hourly-invalid")]
    [InlineData("""{"time":["2026-06-21T06:00Z"],"temperature_850hPa":[1]}""", "no-profile")]
    public void What_cannot_be_used_is_refused_by_name(string json, string code) => Assert.Equal(
        code,
        Assert.Throws<InvalidSoundingException>(() => HourlyProfiles.Read(Encoding.UTF8.GetBytes(json), null, Altitude.FromMetres(0))).Refusals[0].Code);

    private static ConvectiveDay Compute(Sounding sounding, DayAssumptions assumptions) =>
        ConvectiveDay.Compute(sounding, ConvectiveDayTests.Site(), June, assumptions);
}
