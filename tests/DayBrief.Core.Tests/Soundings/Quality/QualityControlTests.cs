using DayBrief.Soundings.Formats.Typed;

namespace DayBrief.Soundings.Quality;

/// <summary>Each finding on an invented ascent that shows it, and not on the same ascent without it. Thresholds are those
/// that the checks document; none comes from a standard unless it says so.</summary>
public sealed class QualityControlTests
{
    // Pressure, temperature, dew point: an ordinary morning without any finding but missing facts.
    private static readonly (double Hpa, double C, double Td)[] Plain =
    [
        (1000, 14, 11), (950, 12, 8), (900, 9, 6), (850, 6, 2), (800, 3, -2), (750, 0, -6), (700, -3, -12), (600, -11, -20), (500, -20, -30),
    ];

    [Fact]
    public void A_plain_ascent_has_only_missing_facts() =>
        Assert.Equal(["time-missing", "station-missing"], Read(Plain).Remarks.Select(remark => remark.Code));

    [Fact]
    public void Pressure_that_rises_is_refused_at_its_level()
    {
        var refusal = Refused([.. Plain[..3], (960, 5, 0), .. Plain[3..]]);
        Assert.Equal(("pressure-not-falling", "levels[3].pressureHpa", 960.0), (refusal.Code, refusal.Field, refusal.Level!.Value.Hectopascals));
    }

    [Fact]
    public void An_ascent_from_the_top_down_is_turned_round()
    {
        var sounding = Read([.. Plain.Reverse()]);
        Assert.Equal(Read(Plain).Levels, sounding.Levels);
        Assert.Contains(sounding.Remarks, remark => remark.Code == "turned-round");
    }

    [Fact]
    public void A_dew_point_slightly_above_is_taken_as_saturated()
    {
        var sounding = Read(With(2, (900, 9, 9.4)));
        Assert.Equal(sounding.Levels[2].Temperature, sounding.Levels[2].DewPoint);
        Assert.Contains(sounding.Remarks, remark => remark is { Code: "dew-point-above-temperature", Severity: Severity.Warning } && remark.Level!.Value.Hectopascals == 900);
    }

    [Fact]
    public void A_dew_point_far_above_is_refused() =>
        Assert.Equal(("dew-point-above-temperature", "levels[2].dewPointC"), (Refused(With(2, (900, 9, 9.6))).Code, Refused(With(2, (900, 9, 9.6))).Field));

    [Fact]
    public void Swapped_columns_are_named() =>
        Assert.Equal("columns-swapped", Refused([.. Plain.Select(level => (level.Hpa, level.Td, level.C))]).Code);

    [Fact]
    public void A_superadiabatic_layer_aloft_is_a_warning_with_its_lapse()
    {
        // 850 to 800 hPa: 6.0 to −1.0 °C over about 490 m, 14 °C/km.
        var remark = Assert.Single(Read(With(4, (800, -1, -4))).Remarks, remark => remark.Code == "superadiabatic-layer");
        Assert.Equal(Severity.Warning, remark.Severity);
        Assert.StartsWith("850 to 800 hPa cools by 14", remark.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_shallow_superadiabatic_layer_on_the_ground_is_information()
    {
        var sounding = Read([(1000, 16, 11), (990, 14, 10), .. Plain[1..]]);
        Assert.Equal(Severity.Info, Assert.Single(sounding.Remarks, remark => remark.Code == "superadiabatic-layer").Severity);
    }

    [Fact]
    public void A_gap_in_the_lowest_three_kilometres_is_a_warning() =>
        Assert.Contains(
            Read([.. Plain[..3], .. Plain[5..]]).Remarks,
            remark => remark is { Code: "pressure-gap", Severity: Severity.Warning } && remark.Message.Contains("900 and 750", StringComparison.Ordinal));

    [Fact]
    public void An_ascent_that_ends_low_is_a_warning()
    {
        var sounding = Read(Plain[..6]);
        Assert.Contains(sounding.Remarks, remark => remark is { Code: "top-too-low", Severity: Severity.Warning });
    }

    /// <summary>Hypsometric thickness from 1000 to 850 hPa at about 10 °C is 1,350 m [AMS]; 1,500 m is wrong by far.</summary>
    [Fact]
    public void Heights_that_disagree_with_temperatures_are_a_warning()
    {
        var levels = Typed(Plain);
        levels[0] = levels[0] with { HeightM = 100 };
        levels[3] = levels[3] with { HeightM = 1450 };
        Assert.DoesNotContain(SoundingReader.Read(new TypedSounding { Levels = levels }).Remarks, remark => remark.Code == "height-disagrees");
        levels[3] = levels[3] with { HeightM = 1600 };
        Assert.Contains(
            SoundingReader.Read(new TypedSounding { Levels = levels }).Remarks,
            remark => remark.Code == "height-disagrees" && remark.Level!.Value.Hectopascals == 850);
    }

    [Theory]
    [InlineData(120, false)]
    [InlineData(500, true)]
    public void A_lowest_level_far_from_the_elevation_is_a_warning(double elevation, bool warned)
    {
        var levels = Typed(Plain);
        levels[0] = levels[0] with { HeightM = 100 };
        var sounding = SoundingReader.Read(new TypedSounding { ElevationM = elevation, Levels = levels });
        Assert.Equal(warned, sounding.Remarks.Any(remark => remark is { Code: "elevation-disagrees", Severity: Severity.Warning }));
    }

    [Fact]
    public void A_repeated_level_keeps_the_first_and_says_so()
    {
        var sounding = Read([.. Plain[..3], (900, 5, 1), .. Plain[3..]]);
        Assert.Equal(Read(Plain).Levels, sounding.Levels);
        Assert.Contains(sounding.Remarks, remark => remark.Code == "duplicate-level" && remark.Level!.Value.Hectopascals == 900);
    }

    [Theory]
    [InlineData("fm35_albany_dd19_12z")]
    [InlineData("fm35_sterling_20261006_12z")]
    [InlineData("igra_norman_20130520_12z")]
    [InlineData("bufr_altenstadt_20250223_10z")]
    [InlineData("bufr_praha_20071120_12z")]
    public void A_good_real_ascent_gets_no_warning(string id) =>
        Assert.DoesNotContain(IndependentDecode.ReadCsv(id).Remarks, remark => remark.Severity == Severity.Warning);

    private static (double, double, double)[] With(int index, (double, double, double) level) => [.. Plain[..index], level, .. Plain[(index + 1)..]];

    private static TypedLevel[] Typed((double Hpa, double C, double Td)[] levels) =>
        [.. levels.Select(level => new TypedLevel { PressureHpa = level.Hpa, TemperatureC = level.C, DewPointC = level.Td })];

    private static Sounding Read((double, double, double)[] levels) => SoundingReader.Read(new TypedSounding { Levels = Typed(levels) });

    private static Refusal Refused((double, double, double)[] levels) =>
        Assert.Single(Assert.Throws<InvalidSoundingException>(() => Read(levels)).Refusals);
}
