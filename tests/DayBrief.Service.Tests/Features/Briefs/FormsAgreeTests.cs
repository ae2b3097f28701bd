using System.Globalization;
using System.Text.RegularExpressions;

namespace DayBrief.Service.Features.Briefs;

/// <summary>No form contradicts itself or another: page, sheet and JSON of many real and invented mornings are read back, in both
/// languages and both systems of units. Expected figures are worked out here from the JSON, not by the program's own rounding.</summary>
public sealed partial class FormsAgreeTests
{
    private static readonly string[] Languages = ["en", "de"];
    private static readonly string[] Units = ["feet-and-knots", "metric"];

    public static TheoryData<string> Mornings => [.. RealMorning.Names];

    [Theory]
    [MemberData(nameof(Mornings))]
    public async Task Page_sheet_and_JSON_give_the_same_four_figures(string morning)
    {
        var made = RealMorning.Make(morning);
        foreach (var (forms, metric) in await FormsOf(made))
        {
            var figures = forms.Json.GetProperty("figures");
            Assert.Equal(4, forms.Values.Count);
            Assert.All(forms.Values, value => Assert.Contains(forms.Sheet.Texts, text => text.Text == value && text.Letters[0].PointSize >= 28));
            Near(forms, 1, figures.GetProperty("usableTopAglM"), metric ? 1 : 1 / 0.3048, metric ? 50 : 100);
            Near(forms, 2, figures.GetProperty("climbMs"), metric ? 1 : 3600 / 1852.0, 0.1);
            if (figures.GetProperty("triggerTime").ValueKind != System.Text.Json.JsonValueKind.Null)
                Near(forms, 0, figures.GetProperty("triggerTemperatureC"), 1, 1);
            if (figures.GetProperty("lastThermal").GetString() is { } last)
                Assert.Equal(DateTimeOffset.Parse(last, CultureInfo.InvariantCulture).ToString("HH:mm", CultureInfo.InvariantCulture), forms.Values[3]);
        }
    }

    [Theory]
    [MemberData(nameof(Mornings))]
    public async Task The_sentence_and_the_picture_say_what_the_figures_say(string morning)
    {
        var made = RealMorning.Make(morning);
        foreach (var (forms, _) in await FormsOf(made))
        {
            // A crowded sheet says fewer clauses of what decides; they stand among its cautions.
            Assert.NotEmpty(forms.Sheet.SizesOf(string.Join("; ", forms.Sentence.TrimEnd('.').Split("; ").Take(3))));
            var picture = forms.Pictures[0];
            if (made.Brief.Day.Times.FirstUsable is not { } first)
            {
                Assert.Contains(forms.Reader["No usable thermals."], picture, StringComparison.Ordinal);
                Assert.DoesNotContain(forms.Values, value => value.Contains(':', StringComparison.Ordinal));
                var no = "";
                Assert.DoesNotContain(forms.Reader.Say($"usable top {no}").Trim(), forms.Html[forms.Html.IndexOf("<svg", StringComparison.Ordinal)..], StringComparison.Ordinal);
                continue;
            }

            Assert.Contains(forms.Values[1], forms.Sentence, StringComparison.Ordinal);
            Assert.Contains(forms.Values[1], picture, StringComparison.Ordinal);
            Assert.Contains($"{first:HH:mm}", picture, StringComparison.Ordinal);
            var spell = Clock().Matches(picture).Select(match => match.Value).First();
            Assert.Equal($"{first:HH:mm}", spell);
        }
    }

    [Theory]
    [MemberData(nameof(Mornings))]
    public async Task The_hours_of_page_and_sheet_are_the_same_and_none_is_above_the_usable_top(string morning)
    {
        var made = RealMorning.Make(morning);
        foreach (var (forms, _) in await FormsOf(made))
        {
            var hours = HourTable.Rows(made, forms.Reader).Where(hour => hour.Top != HourTable.Nothing).ToArray();
            foreach (var hour in hours)
            {
                Assert.True(forms.Number(hour.Top) <= forms.Number(forms.Values[1]), $"{hour.Time}: {hour.Top} of {forms.Values[1]}");
                Assert.True(forms.Number(hour.Climb) <= forms.Number(forms.Values[2]), $"{hour.Time}: {hour.Climb} of {forms.Values[2]}");
                Assert.InRange(TimeOnly.Parse(hour.Time, CultureInfo.InvariantCulture), Time(made.Brief.Day.Times.FirstUsable), Time(made.Brief.Day.Times.Last));
                Assert.Matches($"{Regex.Escape(hour.Time)}\\s+\\S+\\s+{Regex.Escape(hour.Top)}\\s", forms.Page);
            }

            foreach (var wind in WindTable.Rows(made.Brief, forms.Reader).Where(row => row.Wind is not null).Select(row => forms.Reader.Wind(row.Wind!.Value)))
                Assert.Contains(forms.Pictures, picture => picture.Contains(wind, StringComparison.Ordinal));
        }
    }

    [Theory]
    [MemberData(nameof(Mornings))]
    public async Task One_system_of_units_one_rounding_no_minus_nought_and_no_spell_without_length(string morning)
    {
        var made = RealMorning.Make(morning);
        foreach (var (forms, metric) in await FormsOf(made))
        {
            var all = $"{forms.Page} {string.Join(' ', forms.Pictures)}";
            Assert.DoesNotMatch(metric ? Foreign.Feet : Foreign.Metres, Known().Replace(all, ""));
            // What the instructor typed stands on the crowded sheets in units of his own.
            var sheet = made.Inputs.DayLimits is null ? forms.Sheet.All : "";
            Assert.DoesNotMatch(metric ? Foreign.Feet : Foreign.Metres, Known().Replace(sheet, ""));
            var said = JsonTexts(forms.Json);
            Assert.All(new[] { all, sheet, said }, text => Assert.DoesNotMatch("[−-]0([.,]0+)? (kt|m/s|km/h|ft|m|°C)", text));
            Assert.All(new[] { all, sheet, said }, text => Assert.DoesNotMatch("([0-9]{2}:[0-9]{2})–\\1", text));
            // "Visibility too low.From 07:52".
            var cautions = forms.Page[forms.Page.IndexOf(forms.Reader["Cautions, the worst first"], StringComparison.Ordinal)..];
            Assert.DoesNotMatch("\\p{Ll}{3}\\.[0-9\\p{Lu}]", cautions[..cautions.IndexOf(forms.Reader["Wind, sun, pressure"], StringComparison.Ordinal)]);
            Assert.InRange(Radii().Matches(forms.Page).Select(match => match.Value).Distinct().Count(), 0, 1);
            foreach (var match in Heights().Matches(string.Join(' ', forms.Pictures[0])).Cast<Match>())
            {
                var step = metric ? 50 : 100;
                Assert.True(forms.Number(match.Value) % step == 0 || match.Value.Contains("ceiling", StringComparison.Ordinal) || forms.Pictures[0].Contains(forms.Reader.Say($"Ceiling of the field {match.Value}."), StringComparison.Ordinal), $"{match.Value} is not rounded to {step}");
            }
        }
    }

    /// <summary>"Leave below 3.3 kt" on a day that peaks at 3.1; one radius, that of the thermal one circles in.</summary>
    [Theory]
    [MemberData(nameof(Mornings))]
    public async Task The_technique_asks_for_no_more_than_the_day_gives_and_knows_one_thermal(string morning)
    {
        var made = RealMorning.Make(morning);
        foreach (var (forms, _) in await FormsOf(made))
        {
            var leave = LeaveBelow().Match(forms.Page);
            if (!leave.Success)
            {
                Assert.DoesNotContain("class=\"centring\"", forms.Html, StringComparison.Ordinal);
                continue;
            }

            Assert.True(forms.Number(leave.Groups[1].Value) < forms.Number(forms.Values[2]), $"{leave.Value} of {forms.Values[2]}");
            Assert.Equal(2, Radii().Count(forms.Page));
            Assert.Single(Radii().Matches(forms.Page).Select(match => match.Value).Distinct());
        }
    }

    /// <summary>The cautions of the JSON are those of the page, and its sentence is the page's.</summary>
    [Theory]
    [MemberData(nameof(Mornings))]
    public async Task The_JSON_says_what_the_page_says(string morning)
    {
        var made = RealMorning.Make(morning);
        var forms = await ShownForms.OfAsync(made, Reader.Of(made.Brief.Site).Language.Code, made.Brief.Site.Units == Days.SiteUnits.Metric ? "metric" : "feet-and-knots");
        Assert.Equal(forms.Sentence, forms.Json.GetProperty("sentence").GetString());
        var page = Tight(forms.Page);
        foreach (var caution in forms.Json.GetProperty("cautions").EnumerateArray().Select(caution => caution.GetProperty("text").GetString()!))
            Assert.Contains(Tight(caution), page, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Mornings))]
    public async Task Both_languages_say_the_same_numbers(string morning)
    {
        var made = RealMorning.Make(morning);
        foreach (var units in Units)
        {
            var (english, german) = (await ShownForms.OfAsync(made, "en", units), await ShownForms.OfAsync(made, "de", units));
            Assert.Equal(Digits(string.Join(' ', english.Values)), Digits(string.Join(' ', german.Values)));
            Assert.Equal(Digits(english.Sentence).Order(), Digits(german.Sentence).Order());
            for (var i = 0; i < english.Pictures.Count; i++)
                Assert.Equal(Digits(english.Pictures[i]).Order(), Digits(german.Pictures[i]).Order());
        }
    }

    /// <summary>"They reach 1,500 ft and would need 1,400 ft to condense" is no reason.</summary>
    [Theory]
    [MemberData(nameof(Mornings))]
    public async Task What_thermals_would_need_to_condense_lies_above_what_they_reach(string morning)
    {
        var made = RealMorning.Make(morning);
        foreach (var (forms, _) in await FormsOf(made))
        {
            var reason = made.Brief.Day.Cloud.Reasons.Select(forms.Reader.Say).FirstOrDefault(text => text.Contains(forms.Reader.Language.Code == "de" ? "nächsten kommen" : "come nearest", StringComparison.Ordinal));
            if (reason is null)
                continue;
            var heights = Heights().Matches(reason).Select(match => forms.Number(match.Value)).ToArray();
            Assert.True(heights is [var reach, var need] && need > reach, reason);
        }
    }

    /// <summary>The air is stirred deep enough, but no climb is what this site asks for. "Trigger 26 °C at 10:45" said otherwise.</summary>
    [Fact]
    public void A_day_that_is_deep_enough_but_too_weak_has_no_trigger_in_any_form()
    {
        var made = RealMorning.Make("broad-post-frontal.txt", usableClimbMs: 5);
        Assert.True(made.Brief.Day.MaxDepth >= made.Brief.Site.UsableDepth);
        Assert.Null(made.Brief.Day.Times.FirstUsable);
        Assert.Null(FiguresJson.Of(DayFigures.Of(made)).TriggerTime);
        var trigger = HeadFigures.Of(made, Reader.Of(made.Brief.Site))[0];
        Assert.Equal("none", trigger.Value);
        Assert.EndsWith("but too weak to climb", trigger.Detail, StringComparison.Ordinal);
        Assert.DoesNotContain(
            BriefCharts.Day(made, Reader.Of(made.Brief.Site)).Marks.OfType<Charts.TextMark>(),
            mark => mark.Text.StartsWith("trigger", StringComparison.Ordinal));
    }

    /// <summary>"Low cloud 09:05–09:05".</summary>
    [Fact]
    public void A_caution_of_five_minutes_is_about_a_time_and_no_spell_without_length()
    {
        var site = RealMorning.Make("broad-post-frontal.txt").Brief.Site;
        var at = new DateTimeOffset(2026, 5, 21, 9, 5, 0, TimeSpan.FromHours(1));
        var low = new Days.Hazard(Days.HazardKind.LowCloud, 150) { From = at, To = at };
        Assert.StartsWith("About 09:05: ", HazardText.Of(low, site, Reader.Of(site)), StringComparison.Ordinal);
        Assert.Equal("about 09:05", CautionLine.Of(new(low.Kind, [low]), Reader.Of(site)).Time);
    }

    /// <summary>The wind on the runways is that of the ascent, and says so, where nothing newer is known.</summary>
    [Fact]
    public void The_wind_on_a_runway_says_whose_it_is()
    {
        var made = RealMorning.Make("strong-wind-streets.json");
        Assert.All(
            BriefFacts.Of(made, Reader.Of(made.Brief.Site)).Where(fact => fact.Name.StartsWith("Runway", StringComparison.Ordinal)),
            fact => Assert.Contains("(ascent, ", fact.Value, StringComparison.Ordinal));
        var crowded = RealMorning.Make("Jackson");
        Assert.Contains(BriefFacts.Of(crowded, Reader.Of(crowded.Brief.Site)), fact => fact.Value.EndsWith("(ZZZZ, 07:20)", StringComparison.Ordinal));
    }

    private static string Tight(string text) => string.Concat(text.Where(letter => !char.IsWhiteSpace(letter)));

    private static string JsonTexts(System.Text.Json.JsonElement json) => string.Join(
        ' ',
        json.GetProperty("cautions").EnumerateArray().Select(caution => caution.GetProperty("text").GetString())
            .Concat(json.GetProperty("notKnown").EnumerateArray().Select(unknown => unknown.GetString()))
            .Append(json.GetProperty("sentence").GetString()));

    private static TimeOnly Time(DateTimeOffset? at) => TimeOnly.FromTimeSpan(at!.Value.TimeOfDay);

    private static string[] Digits(string text) => [.. Digit().Matches(text).Select(match => match.Value)];

    private static void Near(ShownForms forms, int value, System.Text.Json.JsonElement si, double factor, double step)
    {
        if (si.ValueKind == System.Text.Json.JsonValueKind.Null)
        {
            Assert.DoesNotMatch("[0-9]", forms.Values[value]);
            return;
        }

        var (shown, exact) = (forms.Number(forms.Values[value]), si.GetDouble() * factor);
        Assert.True(Math.Abs(shown - exact) <= (step / 2) + 1e-3 * step, $"{forms.Values[value]} for {exact}");
        Assert.True(Math.Abs((shown / step) - Math.Round(shown / step)) < 1e-6, $"{forms.Values[value]} is no multiple of {step}");
    }

    private static async Task<(ShownForms Forms, bool Metric)[]> FormsOf(MadeBrief made)
    {
        var all = new List<(ShownForms, bool)>();
        foreach (var language in Languages)
        {
            foreach (var units in Units)
                all.Add((await ShownForms.OfAsync(made, language, units), units == "metric"));
        }

        return [.. all];
    }

    [GeneratedRegex("[0-9][0-9.,]* (ft|m) [Rr]adius")]
    private static partial Regex Radii();

    [GeneratedRegex("(?:give less than|weniger als) ([0-9.,]+ (?:kt|m/s))")]
    private static partial Regex LeaveBelow();

    /// <summary>Figures in units that this reader did not choose.</summary>
    private static class Foreign
    {
        public const string Feet = "[0-9] (kt|ft|NM)\\b(?! \\((3050|300) m\\))";
        public const string Metres = "[0-9] (m|m/s|km/h)\\b(?!\\))";
    }

    /// <summary>What rules and medicine say in units of their own, beside the reader's, the names of classes of gliders, and the field's distance from the ascent.</summary>
    [GeneratedRegex(@"\b1[58] m\b|(10[.,]000|1[.,]000) ft \((3050|300) m\)|\(300 m\)|1000 m\b|4 m/s|[0-9.,]+ mm/s")]
    private static partial Regex Known();

    [GeneratedRegex("[0-9][0-9.,]* (ft|m)\\b")]
    private static partial Regex Heights();

    [GeneratedRegex("[0-9]{2}:[0-9]{2}")]
    private static partial Regex Clock();

    [GeneratedRegex("[0-9]+")]
    private static partial Regex Digit();
}
