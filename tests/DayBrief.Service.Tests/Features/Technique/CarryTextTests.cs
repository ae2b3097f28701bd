using DayBrief.Days;
using DayBrief.Flight.Centring;
using DayBrief.Flight.Gliders;
using DayBrief.Flight.Instruments;
using DayBrief.Flight.Thermals;
using DayBrief.Service.Charts;
using DayBrief.Service.Languages;
using DayBrief.Units;

namespace DayBrief.Service.Features.Technique;

/// <summary>The line that is carried into the air, for every way that can be advised, every group and both languages.</summary>
public sealed class CarryTextTests
{
    private static readonly CentringResult Study = CentringStudy.Run(
        new Thermal(Speed.FromMetresPerSecond(2.75), 270, Height.FromMetres(1600), Height.FromMetres(640)),
        GenericGlider.Of(GliderClass.Club),
        Variometer.Usual,
        new() { Encounters = 64 });

    public static TheoryData<string, string> Languages => new() { { "en", "look out" }, { "de", "Luftraum absuchen" } };

    /// <summary>Harm first: whoever follows the line rolls twice; before each roll it says to look out.</summary>
    [Theory]
    [MemberData(nameof(Languages))]
    public void The_look_out_is_never_dropped(string language, string lookOut)
    {
        foreach (var (way, experience, line) in Lines(language))
        {
            Assert.Equal(2, line.Split(" – ").Count(step => step == lookOut));
            if (experience != Experience.BeforeSolo)
                Assert.StartsWith(lookOut, line, StringComparison.Ordinal);
            Assert.True(line.Length <= 130, $"{way}: {line}");
        }
    }

    /// <summary>Words are what was simulated: the seconds that are counted are the way's own.</summary>
    [Fact]
    public void The_counts_are_those_of_the_simulation()
    {
        var shift = Study.Ranking.Single(way => way.Way == CentringWay.StraightenAndShift);
        var line = CarryText.Of(Study with { Recommended = CentringWay.StraightenAndShift }, Experience.CrossCountry, Say("en"));
        var wait = Math.Round(shift.Parameters["afterWorstReadingDeg"] / Study.Circle.RateDegS);
        Assert.Contains($"weakest reading – count {wait:0} – wings level", line, StringComparison.Ordinal);
        Assert.Equal(Math.Round(ClassTable.RollOutS(Study)), wait);
    }

    /// <summary>Nobody is told to reverse, or to be slower than the margin, in any line.</summary>
    [Theory]
    [MemberData(nameof(Languages))]
    public void No_line_reverses(string language, string lookOut)
    {
        Assert.NotEmpty(lookOut);
        Assert.All(Lines(language), each => Assert.DoesNotContain(language == "en" ? "revers" : "andere Richtung", each.Line, StringComparison.OrdinalIgnoreCase));
    }

    private static IEnumerable<(CentringWay Way, Experience Experience, string Line)> Lines(string language) =>
        from way in CentringWays.SimplestFirst
        where way != CentringWay.Reverse
        from experience in Enum.GetValues<Experience>()
        select (way, experience, CarryText.Of(Study with { Recommended = way }, experience, Say(language)));

    private static Measures Say(string language) => new(new Figures(HeightUnit.Feet, Language.Named(language)!));
}
