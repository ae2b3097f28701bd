using System.Net;
using System.Text.RegularExpressions;
using DayBrief.Flight.Centring;
using DayBrief.Flight.Gliders;
using DayBrief.Flight.Instruments;
using DayBrief.Flight.Thermals;
using DayBrief.Service.Charts;
using DayBrief.Service.Languages;
using DayBrief.Units;

namespace DayBrief.Service.Features.Technique;

/// <summary>An invented thermal, studied with few encounters.</summary>
public sealed class TechniqueChartsTests
{
    private static readonly Thermal Thermal = new(Speed.FromMetresPerSecond(4), 150, Height.FromMetres(1800), Height.FromMetres(800), null, 0);

    private static readonly CentringResult Study = CentringStudy.Run(
        Thermal, GenericGlider.Of(GliderClass.Trainer), new Variometer(2, Display.Needle), new CentringOptions { Encounters = 64, WithErrors = false });

    /// <summary>The words about straightening say when to begin and how long the wings are level; the drawing says the same.</summary>
    [Theory]
    [InlineData("en", "roll out {0} s after", "level {0} s")]
    [InlineData("de", "ausleiten {0} s danach", "gerade {0} s")]
    public void Drawing_and_words_say_the_same_seconds(string code, string begin, string level)
    {
        var language = Language.Named(code)!;
        var figures = new Figures(HeightUnit.Feet, language);
        var way = Study.Ranking.First(way => way.Way == CentringWay.StraightenAndShift);
        way = way with { Parameters = new Dictionary<string, double>(way.Parameters) { ["levelS"] = 2.4 } };
        var study = Study with { Recommended = CentringWay.StraightenAndShift, Ranking = [way] };
        var words = WayText.Of(way, study, new(figures));
        var seconds = Regex.Matches(words, @"(\d+[.,]\d) s\b").Select(match => match.Groups[1].Value).ToArray();
        Assert.Equal(2, seconds.Length);
        var drawing = WebUtility.HtmlDecode(SvgWriter.Write(TechniqueCharts.Plan(Thermal, study, null, figures), "plan"));
        Assert.Contains(begin.Replace("{0}", seconds[0], StringComparison.Ordinal), drawing, StringComparison.Ordinal);
        Assert.Contains(level.Replace("{0}", seconds[1], StringComparison.Ordinal), drawing, StringComparison.Ordinal);
        Assert.Contains($"({seconds[0]} s)", drawing, StringComparison.Ordinal);
    }

    /// <summary>By the swing the seconds come from the swing table: the drawing has those that move its circle by the way's share of its
    /// distance from the core, v · (level + one roll) by the closed form.</summary>
    [Fact]
    public void By_the_swing_the_drawing_begins_as_the_words_say_and_moves_as_far_as_the_table()
    {
        var figures = new Figures(HeightUnit.Metres, Language.English);
        var study = Study with { Recommended = CentringWay.BySwing, FirstOffsetM = 120 };
        var way = study.Ranking.First(way => way.Way == CentringWay.BySwing);
        var begin = Regex.Match(WayText.Of(way, study, new(figures)), @"(\d+\.\d) s \(").Groups[1].Value;
        var drawing = WebUtility.HtmlDecode(SvgWriter.Write(TechniqueCharts.Plan(Thermal, study, null, figures), "plan"));
        Assert.Contains($"roll out {begin} s after", drawing, StringComparison.Ordinal);
        var level = (way.Parameters["shareOfOffset"] * 120 / study.Circle.SpeedMs) - study.Circle.RollS;
        Assert.True(level > 0.05, "the example has wings level");
        Assert.Contains($"level {level:0.0} s", drawing, StringComparison.Ordinal);
    }
}
