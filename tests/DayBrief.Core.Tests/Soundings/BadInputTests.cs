using System.Diagnostics;
using System.Text;
using DayBrief.Soundings.Formats.Temp;

namespace DayBrief.Soundings;

/// <summary>What people give by mistake gets one clear answer, and what is merely unusual is read.</summary>
public sealed class BadInputTests
{
    [Theory]
    [InlineData("")]
    [InlineData(" \r\n\t ")]
    public void Nothing_is_refused_as_empty(string text) => Assert.Equal("empty", Text.Refused(text).Code);

    [Fact]
    public void Random_bytes_are_refused_as_binary()
    {
        var bytes = new byte[5000];
        new Random(1).NextBytes(bytes);
        Assert.Equal("binary", Text.Refused(bytes).Code);
    }

    [Theory]
    [InlineData("%PDF-1.7\n1 0 obj", "a PDF")]
    [InlineData("<!DOCTYPE html><html>TTAA</html>", "a web page or XML")]
    [InlineData("METAR EDDF 011150Z 00000KT CAVOK 10/05 Q1020=", "an aerodrome report")]
    [InlineData("XXAA 55139 99120 70615 08000 99013 27237 27515", "a dropsonde report")]
    [InlineData("PK\u0003\u0004rest", "a ZIP archive")]
    public void Other_documents_are_named(string text, string what)
    {
        var refusal = Text.Refused(text);
        Assert.Equal("foreign-content", refusal.Code);
        Assert.Contains(what, refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Five_megabytes_of_prose_are_refused_at_once()
    {
        var text = string.Concat(Enumerable.Repeat("The quick brown fox jumps over the lazy dog. ", 120_000));
        var watch = Stopwatch.StartNew();
        Assert.Equal("not-recognised", Text.Refused(text).Code);

        // A fraction of a second where the search is linear; minutes where it is not. Room for a busy machine.
        Assert.True(watch.Elapsed < TimeSpan.FromSeconds(5), $"took {watch.Elapsed}");
    }

    [Fact]
    public void More_than_ten_megabytes_are_refused() => Assert.Equal("too-large", Text.Refused(new byte[(10 * 1024 * 1024) + 1]).Code);

    [Fact]
    public void A_thousand_levels_are_read() => Assert.Equal(1000, Text.Read(Table(1000)).Levels.Length);

    [Fact]
    public void More_than_twenty_thousand_levels_are_refused_with_the_line()
    {
        var refusal = Text.Refused(Table(20_001));
        Assert.Equal(("too-many-levels", 20_002), (refusal.Code, refusal.Line));
    }

    [Theory]
    [InlineData("utf-8")]
    [InlineData("utf-16")]
    [InlineData("utf-16BE")]
    public void A_byte_order_mark_is_accepted(string encoding)
    {
        var known = Encoding.GetEncoding(encoding);
        byte[] bytes = [.. known.GetPreamble(), .. known.GetBytes(Table(10))];
        Assert.Equal(10, SoundingReader.Read(bytes).Levels.Length);
    }

    [Fact]
    public void UTF16_without_a_mark_is_accepted() => Assert.Equal(10, SoundingReader.Read(Encoding.Unicode.GetBytes(Table(10))).Levels.Length);

    /// <summary>In Windows-1252 the degree sign is the single byte 0xB0, which is no UTF-8.</summary>
    [Fact]
    public void Windows_1252_is_accepted()
    {
        var text = Table(10).Replace("temperature_c", "Temperatur [°C]", StringComparison.Ordinal);
        Assert.Equal(10, SoundingReader.Read(Encoding.Latin1.GetBytes(text)).Levels.Length);
    }

    [Fact]
    public void Teleprinter_control_characters_are_accepted() =>
        Assert.Equal(38, SoundingReader.Read(Encoding.ASCII.GetBytes("\u0001\r\r\n" + DomainMessages.A + "\r\r\n\u0003")).Levels.Length);

    [Fact]
    public void Every_refusal_says_which_formats_are_known()
    {
        var message = Text.Refused("hello").Message;
        Assert.All(SoundingReader.Formats, format => Assert.Contains(format.Name, message, StringComparison.Ordinal));
    }

    private static string Table(int levels)
    {
        var text = new StringBuilder("pressure_hpa,temperature_c\n");
        for (var i = 0; i < levels; i++)
        {
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"{1000 - (950.0 * i / levels):0.0000},{15 - (70.0 * i / levels):0.0000}\n");
        }

        return text.ToString();
    }
}
