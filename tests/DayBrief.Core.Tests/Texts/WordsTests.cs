using System.Globalization;
using DayBrief.Soundings;

namespace DayBrief.Texts;

public sealed class WordsTests
{
    [Fact]
    public void Text_and_figures_stay_apart_until_they_are_said()
    {
        Words part = $"level {3}";
        Words words = $"At {850.25:0.#} hPa, {part}: {{odd}}";
        Assert.Equal("At {0:0.#} hPa, {1}: {{odd}}", words.Format);
        Assert.Equal("At 850.3 hPa, level 3: {odd}", words.ToString());
    }

    [Fact]
    public void They_are_said_in_another_language_with_its_figures_parts_included()
    {
        var comma = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        comma.NumberFormat.NumberDecimalSeparator = ",";
        Words words = $"At {850.25:0.#} hPa, {Words.Of($"level {3}")}";
        Assert.Equal("Bei 850,3 hPa, Stufe 3", words.In(comma, text => text switch
        {
            "At {0:0.#} hPa, {1}" => "Bei {0:0.#} hPa, {1}",
            _ => "Stufe {0}",
        }));
    }

    [Fact]
    public void Messages_that_say_the_same_are_equal() =>
        Assert.Equal(new Remark(Severity.Info, "code", $"{1} of {2}"), new Remark(Severity.Info, "code", "1 of 2"));
}
