using System.Globalization;
using System.Text.Json;
using DayBrief.Days;
using DayBrief.Service.Features.Desk;
using DayBrief.Service.Features.Sending.Calendar;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Infrastructure;
using DayBrief.Service.Languages;
using DayBrief.Soundings;

namespace DayBrief.Service.Features.Briefs;

/// <summary>What the instructor overrules stands in every form of the brief, and what was computed only at the desk.</summary>
public sealed class OverrulingTests
{
    private static readonly JudgementJson Judgement = new()
    {
        TriggerTemperatureC = 14,
        TriggerTime = new(12, 30),
        UsableTopAglM = 900,
        ClimbMs = 1.2,
        LastThermal = new(16, 0),
    };

    [Fact]
    public void The_course_through_the_day_has_the_given_top_climb_trigger_and_end()
    {
        var day = Made(Judgement).Brief.Day;
        var with = day.Steps.Where(step => step.UsableTopAglM is not null).ToArray();
        Assert.Equal(900, with.Max(step => step.UsableTopAglM)!.Value, 6);
        Assert.Equal(1.2, with.Max(step => step.ClimbMs)!.Value, 6);
        Assert.All(with, step => Assert.InRange(step.Time, At(day, 12, 30), At(day, 16, 0)));
        Assert.Equal((At(day, 12, 30), At(day, 16, 0)), (day.Times.FirstUsable, day.Times.Last));
        Assert.True(day.Times.BestFrom >= At(day, 12, 30) && day.Times.BestTo <= At(day, 16, 0), "the best of it lies within");
        // The technique takes its thermal from here: the air rises less by what the glider climbs less.
        var (computed, judged) = (DayThermal.StrongestStep(Made(null).Brief.Day)!, DayThermal.StrongestStep(day)!);
        Assert.True(judged.CoreUpdraftMs < computed.CoreUpdraftMs, "a weaker climb is one in weaker lift");
    }

    /// <summary>Page, table, calendar and JSON of one brief, each with the instructor's figures; the computed ones in none.</summary>
    [Fact]
    public void Every_form_says_the_given_figures_and_the_desk_alone_the_computed_ones()
    {
        var (made, computed) = (Made(Judgement), Made(null));
        var reader = Reader.Of(made.Brief.Site, language: Language.English);
        var sentence = DaySentence.Of(made, reader);
        foreach (var said in new[] { "12:30", "16:00", reader.Height(900) })
            Assert.Contains(said, sentence, StringComparison.Ordinal);
        Assert.DoesNotContain("that none comes", sentence, StringComparison.Ordinal);
        Assert.Null(made.Brief.Day.NoUsableThermalProbability);
        var rows = HourTable.Rows(made, reader);
        Assert.Equal(["13:00", "14:00", "15:00", "16:00"], rows.Where(row => row.Top != "–").Select(row => row.Time));
        Assert.DoesNotContain(rows, row => row.Top == reader.HeightNumber(computed.Brief.Day.MaxUsableTop!.Value.Metres));
        var events = KeyTimeEvents.Of(made, reader).ToDictionary(happening => happening.Key, happening => happening.From);
        Assert.Equal((At(made.Brief.Day, 12, 30), At(made.Brief.Day, 16, 0)), (events["first"], events["last"]));
        var json = JsonSerializer.SerializeToElement(BriefJson.Of(made), Json.Line);
        var day = json.GetProperty("day");
        Assert.Equal((900, 1.2), (day.GetProperty("maxUsableTopAglM").GetDouble(), day.GetProperty("maxClimbMs").GetDouble()));
        Assert.Equal(14, day.GetProperty("trigger").GetProperty("temperatureC").GetDouble());
        Assert.Equal(900, day.GetProperty("steps").EnumerateArray().Max(step => step.GetProperty("usableTopAglM") is { ValueKind: JsonValueKind.Number } top ? top.GetDouble() : 0), 1);
        // A computed range is none of the figure that stands instead.
        foreach (var (range, kept) in new[] { ("triggerTime", false), ("firstUsable", false), ("last", false), ("maxUsableTopAglM", false), ("maxClimbMs", false), ("maxDepthM", true) })
            Assert.Equal(kept, day.GetProperty("ranges").GetProperty(range).TryGetProperty("p50", out var middle) && middle.ValueKind != JsonValueKind.Null);
        Assert.Equal(ComputedFigures.Of(computed, reader), ComputedFigures.Of(made, reader));
    }

    [Fact]
    public void A_longer_afternoon_has_thermals_to_its_end()
    {
        var computed = Made(null).Brief.Day;
        var later = TimeOnly.FromDateTime(computed.Times.Last!.Value.DateTime).AddHours(1);
        var day = Made(new() { LastThermal = later }).Brief.Day;
        var last = day.Steps.Last(step => step is { UsableTopAglM: not null, ClimbMs: > 0 });
        Assert.InRange(last.Time, At(day, later.Hour, later.Minute).AddMinutes(-10), At(day, later.Hour, later.Minute).AddMinutes(90));
        Assert.Equal(computed.MaxClimb, day.MaxClimb);
        Assert.Equal(computed.Steps.Max(step => step.ClimbMs), day.Steps.Max(step => step.ClimbMs));
    }

    [Theory]
    [InlineData(0.0, null)]
    [InlineData(null, 0.0)]
    public void A_top_or_climb_of_nothing_is_a_day_without_usable_thermals(double? top, double? climb)
    {
        var made = Made(new() { UsableTopAglM = top, ClimbMs = climb });
        var reader = Reader.Of(made.Brief.Site, language: Language.English);
        Assert.Equal("By the instructor's judgement no usable thermals.", DaySentence.Of(made, reader));
        Assert.Empty(HourTable.Rows(made, reader));
        Assert.Null(DayThermal.StrongestStep(made.Brief.Day));
        Assert.DoesNotContain(KeyTimeEvents.Of(made, reader), happening => happening.Key is "first" or "best" or "last");
    }

    /// <summary>A sentence with thermals "from 19:00 to 18:00" over an empty table would be worse than none.</summary>
    [Theory]
    [InlineData("23:00", null)]
    [InlineData(null, "04:00")]
    public void Times_that_leave_no_thermals_make_a_day_without_and_never_a_sentence_with_times(string? trigger, string? last)
    {
        var made = Made(new() { TriggerTime = Local(trigger), LastThermal = Local(last) });
        Assert.Equal("By the instructor's judgement no usable thermals.", DaySentence.Of(made, Reader.Of(made.Brief.Site, language: Language.English)));
        Assert.Null(DayThermal.StrongestStep(made.Brief.Day));

        static TimeOnly? Local(string? text) => text is null ? null : TimeOnly.Parse(text, CultureInfo.InvariantCulture);
    }

    [Fact]
    public void A_last_thermal_before_the_trigger_is_refused_at_its_field()
    {
        var refused = Assert.Throws<InvalidInputException>(() => new JudgementJson { TriggerTime = new(15, 0), LastThermal = new(14, 0) }.Check());
        Assert.Equal("judgement.lastThermal", Assert.Single(refused.Errors).Field);
    }

    private static DateTimeOffset At(ConvectiveDay day, int hour, int minute) => LocalClock.InstantOf(day.Date, new(hour, minute), day.Site.TimeZone);

    private static MadeBrief Made(JudgementJson? judgement)
    {
        var inputs = new BriefInputs
        {
            SoundingId = "",
            Site = SiteJson.Parse(Demo.Site),
            Date = new(2026, 5, 21),
            PreparedAt = new(2026, 5, 21, 6, 30, 0, TimeSpan.Zero),
            AscentLatitude = 52.31,
            AscentLongitude = -1.92,
            AscentElevationM = 118,
            Assumptions = new() { MaxTemperatureC = 17, CloudOktas = 1, Ensemble = 20 },
            Judgement = judgement,
        };
        var file = "broad-post-frontal.txt";
        return new(null, inputs, BriefDesk.Compute(inputs, SoundingReader.Read(File.ReadAllBytes(Demo.Path(file)), file)));
    }
}
