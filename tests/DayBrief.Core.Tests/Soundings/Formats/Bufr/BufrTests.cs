using System.Text;
using System.Text.Json;
using DayBrief.House;

namespace DayBrief.Soundings.Formats.Bufr;

public sealed class BufrTests
{
    /// <summary>The numbers that were encoded (see <see cref="TestVector"/>).</summary>
    [Fact]
    public void The_test_vector_gives_back_what_was_encoded()
    {
        var ascent = BufrAscent.Read(BufrDecoder.Decode(TestVector.Message, new BufrBudget())[0], null);
        Assert.Equal("12345", ascent.Source.Station);
        Assert.Equal(new DateTimeOffset(2025, 6, 21, 11, 3, 30, TimeSpan.Zero), ascent.Source.ValidAt);
        Assert.Equal(47.12345, ascent.Source.Position!.Value.LatitudeDegrees, tolerance: 1e-9);
        Assert.Equal(8.54321, ascent.Source.Position!.Value.LongitudeDegrees, tolerance: 1e-9);
        Assert.Equal(431, ascent.Source.Elevation!.Value.Metres, tolerance: 1e-9);
        Assert.Equal([965.0, 925.0, 850.0], ascent.Levels.Select(level => level.PressureHpa!.Value));
        Assert.Equal([434.0, 802.0, 1512.0], ascent.Levels.Select(level => level.HeightM!.Value));
        Assert.Equal([288.15, 286.35, 281.95], ascent.Levels.Select(level => Math.Round(level.TemperatureC!.Value + 273.15, 6)));
        Assert.Equal([283.15, 281.05, 274.75], ascent.Levels.Select(level => Math.Round(level.DewPointC!.Value + 273.15, 6)));
        Assert.Equal([240.0, 250.0, null], ascent.Levels.Select(level => level.WindFromDeg));
        Assert.Equal([2.1, 4.0, null], ascent.Levels.Select(level => level.WindMs));
        Assert.Equal([0.0, 185, 402], ascent.Levels.Select(level => level.SinceLaunch!.Value.TotalSeconds));
        Assert.Equal(47.12345 + 0.0031, ascent.Levels[2].Position!.Value.LatitudeDegrees, tolerance: 1e-9);
        Assert.Equal(8.54321 + 0.0052, ascent.Levels[2].Position!.Value.LongitudeDegrees, tolerance: 1e-9);
    }

    /// <summary>Decoded by ecCodes 2.28 (shared/soundings/csv); every level, every value.</summary>
    [Theory]
    [InlineData("bufr_altenstadt_20250223_10z")]
    [InlineData("bufr_idar_20150712_05z")]
    [InlineData("bufr_praha_20071120_12z")]
    public void Real_messages_equal_the_independent_decode(string id)
    {
        var sounding = IndependentDecode.ReadOriginal(id + ".bufr");
        IndependentDecode.AssertEqual(IndependentDecode.Rows(id), sounding);
        using var index = JsonDocument.Parse(File.ReadAllText(Repository.Shared("soundings", "index.json")));
        var facts = index.RootElement.EnumerateArray().Single(entry => entry.GetProperty("id").GetString() == id);
        Assert.Equal(facts.GetProperty("station").GetString(), sounding.Source.Station);
        Assert.Equal(facts.GetProperty("lat").GetDouble(), sounding.Source.Position!.Value.LatitudeDegrees, tolerance: 1e-4);
        Assert.Equal(facts.GetProperty("lon").GetDouble(), sounding.Source.Position!.Value.LongitudeDegrees, tolerance: 1e-4);

        // The index takes the height of the lowest level, which at Praha is 2 m above the station's ground.
        Assert.Equal(facts.GetProperty("elevation_m").GetDouble(), sounding.Source.Elevation!.Value.Metres, tolerance: 2);
        Assert.Equal(facts.GetProperty("time").GetString(), sounding.Source.ValidAt!.Value.ToString("yyyy-MM-ddTHH:mm'Z'", System.Globalization.CultureInfo.InvariantCulture));
    }

    [Fact]
    public void Telegram_headings_and_other_messages_around_are_passed_over()
    {
        var original = File.ReadAllBytes(Repository.Shared("soundings", "original", "bufr_praha_20071120_12z.bufr"));
        byte[] around = [.. Encoding.ASCII.GetBytes("\u0001\r\r\n123\r\r\nIUSD40 OKLI 201200\r\r\n"), .. original, .. Encoding.ASCII.GetBytes("\r\r\n\u0003"), .. original];
        Assert.Equal(SoundingReader.Read(original).Levels, SoundingReader.Read(around).Levels);
        Assert.Single(SoundingReader.ReadAll(around));
    }

    [Fact]
    public void Three_levels_are_too_few() => Assert.Equal("too-few-levels", Text.Refused(TestVector.Bytes).Code);

    [Fact]
    public void A_cut_message_is_refused_with_its_byte()
    {
        var refusal = Text.Refused(TestVector.Bytes[..100]);
        Assert.Equal(("bufr-cut", 4L), (refusal.Code, refusal.ByteOffset));
    }

    /// <summary>3 07 080 is a surface report (SYNOP) in the WMO tables.</summary>
    [Fact]
    public void Another_template_is_named_and_refused()
    {
        var bytes = TestVector.Bytes.ToArray();
        bytes[8 + 22 + 7] = 0xC7;
        bytes[8 + 22 + 8] = 80;
        var refusal = Text.Refused(bytes);
        Assert.Equal("bufr-not-supported", refusal.Code);
        Assert.Contains("3 07 080", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_replication_of_replications_is_stopped()
    {
        // 101255 101255 101255 205000: 255³ times an operator that takes no bit.
        var bytes = TestVector.Bytes.ToList();
        var at = 8 + 22;
        bytes.RemoveRange(at + 7, 2);
        bytes.InsertRange(at + 7, [0x43, 255, 0x42, 255, 0x41, 255, 0x85, 0]);
        bytes[at + 2] += 6;
        bytes[6] += 6;
        Assert.Equal("too-many-levels", Text.Refused([.. bytes]).Code);
    }
}
