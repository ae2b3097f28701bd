using System.Globalization;
using System.Net;
using System.Text.Json;
using System.Text.RegularExpressions;
using DayBrief.Days;
using DayBrief.Flight.Gliders;
using DayBrief.Service.Charts;
using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Infrastructure;
using DayBrief.Service.Languages;
using DayBrief.Soundings;

namespace DayBrief.Service.Features.Technique;

/// <summary>Whatever the technique says to whomever on whatever day lies within bank, height and margin of the group: every bank and
/// height on page, PDF and JSON is parsed back and held against limits computed here anew.</summary>
/// <remarks>[FAA-25] ch. 5: stall speed in a turn = stall speed · √(1/cos φ). The thermals are those of the demonstration ascents.</remarks>
public sealed partial class WithinLimitsTests
{
    /// <summary>Stall speeds of the generic classes, km/h, as the code's documentation names them; here apart from the code.</summary>
    private static readonly Dictionary<GliderClass, double> StallKmh = new()
    {
        [GliderClass.EarlyTrainer] = 56,
        [GliderClass.Trainer] = 67,
        [GliderClass.Club] = 64,
        [GliderClass.Standard] = 66,
        [GliderClass.Open] = 68,
    };

    private static readonly TechniqueDesk Desk = new() { Encounters = 64 };

    private static readonly Brief[] Days = [.. Made()];

    public static TheoryData<Experience, string> Readers =>
        [.. from experience in Enum.GetValues<Experience>() from code in new[] { "en", "de" } select (experience, code)];

    [Theory]
    [MemberData(nameof(Readers))]
    public void No_word_on_page_or_sheet_advises_below_or_beyond(Experience experience, string code)
    {
        var (banks, heights) = (0, 0);
        foreach (var day in Days)
        {
            foreach (var glider in Enum.GetValues<GliderClass>())
            {
                foreach (var unit in new[] { HeightUnit.Feet, HeightUnit.Metres })
                {
                    var figures = new Figures(unit, Language.Named(code)!);
                    var view = TechniqueView.Now(day, new() { Experience = experience, Glider = glider }, figures, Desk, TestContext.Current.CancellationToken)!;
                    foreach (var text in Forms(view))
                        Holds(text, day, view, ref banks, ref heights);
                }
            }
        }

        Assert.True(banks > 200, $"{banks} banks were read");
        Assert.True(heights > 100, $"{heights} heights were read");
    }

    /// <summary>Look-out, joining, least height, steepest bank and the rule against reversing, for everybody on everything.</summary>
    [Theory]
    [MemberData(nameof(Readers))]
    public void The_safety_rules_stand_for_every_group_on_page_sheet_and_json(Experience experience, string code)
    {
        string[] rules = code == "en"
            ? ["Look out before every turn", "Joining others", "Never reverse the turn, least of all towards another glider", "Nobody of your group circles below", "Steepest for your group"]
            : ["Luftraum beobachten", "Einkreisen zu anderen", "Nie die Drehrichtung wechseln", "kreist niemand aus deiner Gruppe", "Am steilsten für deine Gruppe"];
        var figures = new Figures(HeightUnit.Feet, Language.Named(code)!);
        foreach (var day in Days)
        {
            var view = TechniqueView.Now(day, new() { Experience = experience }, figures, Desk, TestContext.Current.CancellationToken)!;
            foreach (var text in Forms(view))
                Assert.All(rules, rule => Assert.Contains(rule, text, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Json_gives_every_group_and_class_its_limits_and_no_circle_beyond_them()
    {
        var circles = 0;
        foreach (var day in Days)
        {
            var json = JsonSerializer.SerializeToElement(TechniqueJson.Now(day, new(HeightUnit.Feet, Language.English), Desk, TestContext.Current.CancellationToken), Json.Line);
            var groups = json.GetProperty("groups").EnumerateArray().ToArray();
            Assert.Equal(15, groups.Select(each => (each.GetProperty("experience").GetString(), each.GetProperty("glider").GetString())).Distinct().Count());
            foreach (var each in groups)
            {
                Assert.NotEqual("reverse", each.GetProperty("way").GetString());
                var glider = GenericGlider.Named(each.GetProperty("glider").GetString())!.Value;
                var group = Choice.Parse<Experience>(each.GetProperty("experience").GetString())!.Value;
                var advised = each.GetProperty("byHeight").EnumerateArray().Concat(each.GetProperty("tightenTo").EnumerateArray()).ToList();
                if (each.GetProperty("circle").ValueKind == JsonValueKind.Object)
                    advised.Add(each.GetProperty("circle"));
                foreach (var circle in advised)
                {
                    circles++;
                    var (height, bank, speed) = (circle.GetProperty("heightM").GetDouble(), circle.GetProperty("bankDeg").GetDouble(), circle.GetProperty("speedKt").GetDouble());
                    Assert.True(height >= Least(day, group) - 0.1, $"{height} m");
                    Assert.True(bank <= Steepest(day, group), $"{bank}°");
                    Assert.True(MarginPct(glider, bank, speed * 1.852) >= (height < 500 ? 25 : 15) - 0.01, $"{bank}° at {speed} kt, {height} m");
                }
            }
        }

        Assert.True(circles > 100, $"{circles} circles");
    }

    /// <summary>Everything that a reader of one glider sees: the page's words and drawings, and the sheet's.</summary>
    private static IEnumerable<string> Forms(TechniqueView view)
    {
        yield return string.Join('\n', TechniqueParts.Of(view).SelectMany(part => part.Lines));
        var sheet = TechniqueSheet.Draw(view, "T", "S", [], "A");
        yield return string.Join(' ', TextsOf(sheet));
        if (view is { None: null, Facts: { } facts })
        {
            yield return string.Join('\n', SafetyText.Of(view)) + TechniqueCharts.Section(facts).Description + "\n"
                + TechniqueCharts.Plan(facts.Thermal, facts.Study, null, facts.Measures.Figures).Description;
        }
    }

    private static IEnumerable<string> TextsOf(Drawing drawing) =>
        Svg().Matches(SvgWriter.Write(drawing, "x")).Select(match => WebUtility.HtmlDecode(match.Groups[1].Value));

    private static void Holds(string text, Brief day, TechniqueView view, ref int banks, ref int heights)
    {
        var (group, glider) = (view.Pilot.Experience, view.Pilot.Glider);
        foreach (Match match in BankWithSpeed().Matches(text))
        {
            banks++;
            var (bank, speed) = (Number(match.Groups[1].Value), Number(match.Groups[2].Value));
            var kmh = match.Groups[3].Value == "kt" ? speed * 1.852 : speed;
            Assert.True(bank <= Steepest(day, group), match.Value);
            // In the mixed group's table a bank stands behind the class that flies it.
            var own = Enum.GetValues<GliderClass>().Cast<GliderClass?>()
                .FirstOrDefault(each => text[..match.Index].TrimEnd().EndsWith(GliderText.Name(each!.Value, view.Say.Language), StringComparison.Ordinal)) ?? glider;
            Assert.True(MarginPct(own, bank, kmh) >= 15 - 0.01, $"{match.Value}: {MarginPct(own, bank, kmh):0.0} %");
        }

        // A bank without its speed, in whatever words, is what must not be.
        foreach (Match match in Degrees().Matches(BankWithSpeed().Replace(text, "")))
            Assert.Matches(Allowed(), match.Value);
        foreach (Match match in AdvisedHeight().Matches(text))
        {
            heights++;
            var metres = Number(match.Groups["figure"].Value) * (match.Groups["unit"].Value == "ft" ? 0.3048 : 1);
            Assert.True(metres >= Least(day, group) - 0.1, match.Value);
        }
    }

    private static double Number(string text) =>
        double.Parse(text.Replace(",", "", StringComparison.Ordinal).Replace(".", "", StringComparison.Ordinal).Replace("\u00a0", "", StringComparison.Ordinal), CultureInfo.InvariantCulture);

    private static double MarginPct(GliderClass glider, double bank, double kmh) =>
        100 * ((kmh / (StallKmh[glider] / Math.Sqrt(Math.Cos(bank * Math.PI / 180)))) - 1);

    private static double Least(Brief day, Experience group) =>
        day.Site.Limits.Circling.LeastHeight.For(group)?.Metres ?? group switch { Experience.BeforeSolo => 400, Experience.LocalSolo => 350, _ => 250 };

    private static double Steepest(Brief day, Experience group) =>
        day.Site.Limits.Circling.SteepestBankDegrees.For(group) ?? group switch { Experience.BeforeSolo => 30, Experience.LocalSolo => 40, _ => 45 };

    private static IEnumerable<Brief> Made()
    {
        foreach (var (file, limits) in from file in Directory.GetFiles(Demo.Path("")).Where(file => !file.EndsWith(".md", StringComparison.Ordinal)).Order(StringComparer.Ordinal)
                                       from limits in new[] { "", ""","leastCirclingHeightM":{"beforeSolo":900,"localSolo":700,"crossCountry":500},"steepestBankDeg":{"beforeSolo":22,"localSolo":33,"crossCountry":52}""" }
                                       select (file, limits))
        {
            var sounding = SoundingReader.Read(File.ReadAllBytes(file), Path.GetFileName(file));
            var brief = Brief.Prepare(new()
            {
                Sounding = sounding,
                Site = SiteJson.Parse(Demo.Site[..^1] + limits + "}").ToSite(),
                Date = new(2026, 6, 18),
                Assumptions = new() { EnsembleSize = 0 },
                PreparedAt = new(2026, 6, 18, 6, 0, 0, TimeSpan.Zero),
            });
            if (brief.Day.MaxUsableTop is not null)
                yield return brief;
        }
    }

    [GeneratedRegex(@"(\d+)° (?:of bank at|Schräglage mit) (\d+) (kt|km/h)")]
    private static partial Regex BankWithSpeed();

    [GeneratedRegex(@".{0,30}\d°.{0,24}")]
    private static partial Regex Degrees();

    /// <summary>Angles of turn, directions of wind, and the errors that are warned of.</summary>
    [GeneratedRegex(@"° (?:of turn|Kreis|Drehung|too (?:much|little) bank|zu (?:viel|wenig) Schräglage|after|danach|nach)|°\)|\d{3}°|°, ")]
    private static partial Regex Allowed();

    [GeneratedRegex(@"(?:Low|Middle|Top|Niedrig|Mitte|Oben|Unten) \((?<figure>[\d,.]+) (?<unit>ft|m)\)|(?:circles below|At the latest at|Usable from|Nutzbar von|Spätestens in) (?<figure>[\d,.]+) (?<unit>ft|m)")]
    private static partial Regex AdvisedHeight();

    [GeneratedRegex("<text[^>]*>([^<]*)</text>")]
    private static partial Regex Svg();
}
