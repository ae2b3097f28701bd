using System.Globalization;
using DayBrief.House;

namespace DayBrief.Soundings.Quality;

/// <summary>What is asked about, and what is not used: neither passes without a word. The real ascents beside the clone are the
/// check against asking too often.</summary>
public sealed class AskedValuesTests
{
    /// <summary>8.6 °C typed as 48.6: the case of the issue, a fall of 473 °C/km over 10 hPa (about 86 m).</summary>
    [Fact]
    public void A_ground_of_48_6_degrees_over_an_ordinary_layer_is_asked_about_twice_and_still_used()
    {
        var sounding = Read((1000, 48.6, 5), (990, 7.8, 4), (950, 6, 3), (900, 3, 1), (850, 0, -2), (800, -3, -6), (700, -9, -15));
        Assert.Equal(48.6, sounding.Surface.Temperature!.Value.Celsius, tolerance: 1e-9);
        var asked = sounding.Remarks.Where(remark => remark.Asks).ToArray();
        Assert.Equal(["value-implausible", "superadiabatic-layer"], asked.Select(remark => remark.Code));
        Assert.Contains("48.6 to 7.8 °C", asked[1].Message, StringComparison.Ordinal);
        Assert.DoesNotContain(sounding.Remarks, remark => remark.Message.Contains("usual over heated ground", StringComparison.Ordinal));
        Assert.All(asked, remark => Assert.Equal(Severity.Warning, remark.Severity));
    }

    [Theory]
    [InlineData(46, 5, true)] // hotter than nearly anywhere
    [InlineData(44, 5, false)]
    [InlineData(33, 31, true)] // sultrier
    [InlineData(33, 29, false)]
    [InlineData(-42, -45, true)]
    [InlineData(-38, -42, false)]
    public void The_ground_is_asked_about_beyond_what_people_fly_in(double celsius, double dewPoint, bool asked) => Assert.Equal(
        asked,
        Read((1000, celsius, dewPoint), (950, celsius - 4, dewPoint - 4), (900, celsius - 8, -60), (800, celsius - 16, -70), (700, celsius - 24, -80), (600, celsius - 33, -85))
            .Remarks.Any(remark => remark is { Asks: true, Code: "value-implausible" }));

    /// <summary>One temperature aloft with a wrong sign cools below or above itself by far more than the air does.</summary>
    [Theory]
    [InlineData(-6)]
    [InlineData(26)]
    public void A_single_wrong_temperature_aloft_is_asked_about(double wrong) => Assert.Contains(
        Read((1000, 14, 11), (950, 12, 8), (900, 9, 6), (850, wrong, -10), (800, 3, -2), (750, 0, -6), (700, -3, -12)).Remarks,
        remark => remark is { Asks: true, Code: "superadiabatic-layer" });

    /// <summary>Real ascents, heated ground and a wet sensor among them: no question that nobody can answer.</summary>
    [Fact]
    public void No_real_ascent_is_asked_about()
    {
        var folder = Path.Combine(Repository.Root, "..", "shared", "soundings", "csv");
        Assert.SkipUnless(Directory.Exists(folder), "The shared ascents are not beside this clone.");
        foreach (var file in Directory.GetFiles(folder, "*.csv"))
        {
            var sounding = SoundingReader.Read(File.ReadAllBytes(file), Path.GetFileName(file));
            Assert.True(sounding.Remarks.All(remark => !remark.Asks), $"{Path.GetFileName(file)}: {sounding.Remarks.FirstOrDefault(remark => remark.Asks)?.Message}");
        }
    }

    /// <summary>Each group of a real message in turn is made unreadable: it is refused, or the ascent says what it does without.</summary>
    [Fact]
    public void No_damaged_group_is_left_out_in_silence()
    {
        var file = Path.Combine(Repository.Root, "soundings", "broad-post-frontal.txt");
        var groups = File.ReadAllText(file).Split([' ', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries);
        var whole = Text.Read(string.Join(' ', groups));
        var silent = new List<string>();
        for (var i = 0; i < groups.Length; i++)
        {
            if (groups[i].Length != 5 || !groups[i].All(char.IsAsciiDigit))
                continue;
            try
            {
                var damaged = Text.Read(string.Join(' ', groups.Select((group, at) => at == i ? "1X2#3" : group)));
                if (!damaged.Levels.SequenceEqual(whole.Levels) && !damaged.Remarks.Any(remark => remark.LeavesOut))
                    silent.Add(string.Create(CultureInfo.InvariantCulture, $"{i}: {groups[i]}"));
            }
            catch (InvalidSoundingException)
            {
                // Told, with its place.
            }
        }

        Assert.Empty(silent);
    }

    private static Sounding Read(params (double Hpa, double C, double Td)[] levels) => Text.Read(
        "pressure_hpa,temperature_c,dew_point_c\n"
        + string.Join('\n', levels.Select(level => string.Create(CultureInfo.InvariantCulture, $"{level.Hpa},{level.C},{level.Td}"))));
}
