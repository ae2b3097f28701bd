namespace DayBrief.Soundings.Formats.Pasted;

/// <summary>"Not recognised" says what it comes nearest to, and what is missing.</summary>
public sealed class NearestFormTests
{
    [Theory]
    [InlineData("1000 100 15 10 270 5\n950 550 12 8 275 8\n900 1000 9 6 280 12\n850 1500 6 3 285 15\n", "names the columns", 1)]
    [InlineData("Morning ascent\n\n1000;100;15\n950;550;12\n900;1000;9\n", "names the columns", 3)]
    [InlineData("pressure_hpa,dewpoint_c\n1000,10\n", "column-missing", 0)]
    [InlineData("PRES HGHT DRCT SKNT\n1000 100 270 5\n", "no temperature", 1)]
    [InlineData("TEMP DWPT RELH\n15 10 70\n", "neither pressure nor height", 1)]
    [InlineData("PRES HGHT TEMP DWPT\n(no data)\n", "no line of figures", 1)]
    [InlineData("TTAA ????? 10868\n99014 12345", "FM 35 TEMP", 1)]
    [InlineData("-----------------------------\nsome words\n", "some words", 1)]
    public void A_refusal_names_the_nearest_form(string text, string says, int line)
    {
        var refusal = Text.Refused(text);
        if (line == 0)
        {
            Assert.Equal(says, refusal.Code);
            return;
        }

        Assert.Equal(("not-recognised", line), (refusal.Code, refusal.Line));
        Assert.Contains(says, refusal.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("-----", refusal.Message, StringComparison.Ordinal);
    }

    /// <summary>[FAA28]: winds and temperatures aloft; invented values.</summary>
    [Fact]
    public void Winds_aloft_are_named_as_wind_only()
    {
        var refusal = Text.Refused("FBUS31 KWNO 210140\nDATA BASED ON 210000Z\nVALID 210600Z   FOR USE 0500-0900Z. TEMPS NEG ABV 24000\n\nFT  3000    6000    9000   12000   18000   24000\nZZA 2213 2319+07 2422+02 2530-03 2735-14 2745-27\n");
        Assert.Equal("wind-only", refusal.Code);
    }

    [Fact]
    public void Net_CDF_is_refused_with_what_to_do() =>
        Assert.Contains("CSV", Text.Refused("CDF\u0001 rest").Message, StringComparison.Ordinal);
}
