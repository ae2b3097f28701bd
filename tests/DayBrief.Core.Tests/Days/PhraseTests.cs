using System.Globalization;
using DayBrief.Units;

namespace DayBrief.Days;

public sealed class PhraseTests
{
    /// <summary>By hand: 1,000 m are 3,281 ft, said to 100 ft; 10 m/s are 19.4 kt; 1 m/s is 1.9 kt [SI].</summary>
    [Fact]
    public void Quantities_are_said_in_the_readers_units()
    {
        var phrase = Phrase.Of($"top {Height.FromMetres(1000)}, wind {Speed.FromMetresPerSecond(10)}, climb {Speed.FromMetresPerSecond(1):climb}");
        Assert.Equal("top 1,000 m, wind 36 km/h, climb 1.0 m/s", phrase.In(SiteUnits.Metric));
        Assert.Equal("top 3,300 ft, wind 19 kt, climb 1.9 kt", phrase.In(SiteUnits.FeetAndKnots));
    }

    /// <summary>By hand: 10 K/km are 3.0 °C per 1,000 ft; 5 m/s per km are 18 km/h per 1,000 m, 3.0 kt per 1,000 ft.</summary>
    [Fact]
    public void Changes_with_height_are_said_per_thousand()
    {
        var phrase = Phrase.Of($"{new PerHeight(10, OfSpeed: false)}; {new PerHeight(5, OfSpeed: true)}");
        Assert.Equal("10.0 °C per 1,000 m; 18.0 km/h per 1,000 m", phrase.In(SiteUnits.Metric));
        Assert.Equal("3.0 °C per 1,000 ft; 3.0 kt per 1,000 ft", phrase.In(SiteUnits.FeetAndKnots));
    }

    /// <summary>The translation gets the text as written; parts of a sentence are sentences too.</summary>
    [Fact]
    public void A_sentence_is_said_in_another_language()
    {
        var comma = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        (comma.NumberFormat.NumberDecimalSeparator, comma.NumberFormat.NumberGroupSeparator) = (",", ".");
        var phrase = Phrase.Of($"{Phrase.Plain("each degree")} costs {Height.FromMetres(1000)}, {new PerHeight(10, OfSpeed: false)}");
        Assert.Equal("jedes Grad kostet 1.000 m, 10,0 °C je 1.000 m", phrase.In(SiteUnits.Metric, comma, text => text switch
        {
            "{0} costs {1}, {2}" => "{0} kostet {1}, {2}",
            "each degree" => "jedes Grad",
            _ => "{0:0.0} °C je 1.000 m",
        }));
    }
}
