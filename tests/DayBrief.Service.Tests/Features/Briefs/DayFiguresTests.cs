using DayBrief.Service.Features.Sites;
using DayBrief.Service.Languages;
using DayBrief.Soundings;

namespace DayBrief.Service.Features.Briefs;

/// <summary>What readers get where the instructor overrules, on two invented days.</summary>
public sealed class DayFiguresTests
{
    private const string Thermals = "broad-post-frontal.txt";
    private const string Stratus = "stratus-no-thermals.csv";

    [Fact]
    public void A_first_thermal_that_was_not_computed_is_none_whatever_the_instructor_says_of_the_trigger()
    {
        Assert.Null(DayFigures.Of(Made(Stratus, null)).FirstUsable);
        var judged = Made(Stratus, new() { TriggerTime = new(12, 0), UsableTopAglM = 600, ClimbMs = 1, LastThermal = new(16, 0) });
        var figures = DayFigures.Of(judged);
        Assert.Equal(new TimeOnly(12, 0), TimeOnly.FromDateTime(figures.TriggerTime!.Value.DateTime));
        Assert.Null(figures.FirstUsable);
        var sentence = DaySentence.Of(judged, Reader.Of(judged.Brief.Site, language: Language.English));
        Assert.StartsWith("By the instructor's judgement usable to", sentence, StringComparison.Ordinal);
        Assert.DoesNotContain("12:00", sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void The_first_thermal_is_the_computed_one_but_not_before_the_trigger_that_the_instructor_gives()
    {
        var computed = Made(Thermals, null);
        var first = computed.Brief.Day.Times.FirstUsable!.Value;
        Assert.Equal(first, DayFigures.Of(computed).FirstUsable);
        var earlier = new TimeOnly(first.Hour - 1, 0);
        Assert.Equal(first, DayFigures.Of(Made(Thermals, new() { TriggerTime = earlier })).FirstUsable);
        var later = new TimeOnly(first.Hour + 1, 0);
        Assert.Equal(later, TimeOnly.FromDateTime(DayFigures.Of(Made(Thermals, new() { TriggerTime = later })).FirstUsable!.Value.DateTime));
    }

    private static MadeBrief Made(string file, JudgementJson? judgement)
    {
        var stratus = file == Stratus;
        var inputs = new BriefInputs
        {
            SoundingId = file,
            Site = SiteJson.Parse(Demo.Site),
            Date = stratus ? new(2026, 10, 20) : new(2026, 5, 21),
            PreparedAt = new(2026, 5, 21, 6, 30, 0, TimeSpan.Zero),
            AscentLatitude = 52.31,
            AscentLongitude = -1.92,
            AscentElevationM = 118,
            Assumptions = new() { MaxTemperatureC = stratus ? null : 17, CloudOktas = stratus ? 8 : 1, Ensemble = 20 },
            Judgement = judgement,
        };
        return new(null, inputs, BriefDesk.Compute(inputs, SoundingReader.Read(File.ReadAllBytes(Demo.Path(file)), file)));
    }
}
