using System.Globalization;
using System.Text.RegularExpressions;
using DayBrief.House;

namespace DayBrief.Service.Features.Phone;

/// <summary>Contrast of every tone with the paper, in every scheme, from the style sheet itself. Formula and limits: Web Content
/// Accessibility Guidelines 2.2, "contrast ratio", "relative luminance", success criteria 1.4.3, 1.4.6 and 1.4.11.</summary>
public sealed partial class ContrastTests
{
    private static readonly string Sheet = File.ReadAllText(Path.Combine(Repository.Service, "wwwroot", "daybrief.css"));

    /// <summary>Text and the inks of charts, which hold text too: 4.5; hairlines and hatching: 3. In sunlight 7 for text.</summary>
    [Theory]
    [InlineData(":root {", 4.5)]
    [InlineData("dark) {\n  :root {", 4.5)]
    [InlineData(":root.dark {", 4.5)]
    [InlineData(":root.sunlight {", 7)]
    public void Every_tone_stands_out_from_the_paper(string scheme, double text)
    {
        var tones = Tones(scheme);
        Assert.All(["ink", "soft", "accent", "warning"], tone => Assert.True(Contrast(tones[tone], tones["paper"]) >= text, $"{tone}: {Contrast(tones[tone], tones["paper"]):0.00}"));
        Assert.True(Contrast(tones["faint"], tones["paper"]) >= 3, $"faint: {Contrast(tones["faint"], tones["paper"]):0.00}");
    }

    [Fact]
    public void Dark_is_the_same_chosen_or_followed() => Assert.Equal(Tones("dark) {\n  :root {"), Tones(":root.dark {"));

    /// <summary>Black and white are 21 by the definition; #767676 on white is the grey usually named for just 4.5.</summary>
    [Theory]
    [InlineData("#000", "#fff", 21)]
    [InlineData("#767676", "#ffffff", 4.54)]
    public void The_formula_is_the_published_one(string a, string b, double expected) => Assert.Equal(expected, Contrast(a, b), tolerance: 0.005);

    private static Dictionary<string, string> Tones(string scheme)
    {
        var from = Sheet.IndexOf(scheme, StringComparison.Ordinal);
        Assert.True(from >= 0, $"\"{scheme}\" is in the style sheet");
        var rule = Sheet[(from + scheme.Length)..];
        return Tone().Matches(rule[..rule.IndexOf('}', StringComparison.Ordinal)]).ToDictionary(tone => tone.Groups[1].Value, tone => tone.Groups[2].Value);
    }

    private static double Contrast(string a, string b)
    {
        var (lighter, darker) = (Math.Max(Luminance(a), Luminance(b)), Math.Min(Luminance(a), Luminance(b)));
        return (lighter + 0.05) / (darker + 0.05);
    }

    private static double Luminance(string colour)
    {
        var digits = colour[1..];
        if (digits.Length == 3)
            digits = string.Concat(digits.Select(digit => $"{digit}{digit}"));
        double Channel(int at)
        {
            var share = int.Parse(digits.AsSpan(at, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
            return share <= 0.04045 ? share / 12.92 : Math.Pow((share + 0.055) / 1.055, 2.4);
        }

        return (0.2126 * Channel(0)) + (0.7152 * Channel(2)) + (0.0722 * Channel(4));
    }

    [GeneratedRegex("--([a-z]+): (#[0-9a-f]{3,6});")]
    private static partial Regex Tone();
}
