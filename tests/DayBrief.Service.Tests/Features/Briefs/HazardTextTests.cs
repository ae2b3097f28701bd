using DayBrief.Days;
using DayBrief.Service.Infrastructure;
using DayBrief.Service.Languages;
using DayBrief.Units;

namespace DayBrief.Service.Features.Briefs;

/// <summary>The words of a caution carry its cause, its figure and its time, in every language.</summary>
public sealed class HazardTextTests
{
    private static readonly Site Field = new()
    {
        Position = Position.FromDegrees(52, -1),
        Elevation = Altitude.FromMetres(100),
        TimeZone = TimeZoneInfo.FindSystemTimeZoneById("Europe/London"),
        LaunchMethods = [LaunchMethod.Winch, LaunchMethod.Aerotow],
    };

    private static readonly Hazard Crosswind = new(HazardKind.Crosswind, Speed.FromKnots(12).MetresPerSecond)
    {
        About = "06/24",
        Source = WindSource.Assumed,
        From = new DateTimeOffset(2026, 6, 1, 10, 0, 0, TimeSpan.Zero),
        To = new DateTimeOffset(2026, 6, 1, 14, 0, 0, TimeSpan.Zero),
        Passed = [new(CrosswindGroup.BeforeSolo, Speed.FromKnots(8).MetresPerSecond), new(CrosswindGroup.LocalSolo, Speed.FromKnots(10).MetresPerSecond)],
    };

    [Fact]
    public void Crosswind_names_runway_time_and_limits_in_local_time() =>
        Assert.Equal(
            "11:00–15:00: About 12 kt across runway 06/24, expected: above the site's limit before solo (8 kt), for local solo (10 kt).",
            HazardText.Of(Crosswind, Field, Reader.Of(Field)));

    [Fact]
    public void Crosswind_speaks_German() =>
        Assert.Equal(
            "11:00–15:00: Etwa 12 kt quer zur Piste 06/24, erwartet: über der Grenze des Platzes vor dem ersten Alleinflug (8 kt), für Alleinflug am Platz (10 kt).",
            HazardText.Of(Crosswind, Field, Reader.Of(Field, language: Language.German)));

    [Fact]
    public void Thin_air_is_told_for_each_launch_method()
    {
        var text = HazardText.Of(new(HazardKind.DensityAltitude, 900), Field, Reader.Of(Field));
        Assert.Contains("winch", text, StringComparison.Ordinal);
        Assert.Contains("aerotow", text, StringComparison.Ordinal);
        Assert.DoesNotContain("bungee", text, StringComparison.Ordinal);
    }

    public static TheoryData<HazardKind> Kinds => [.. Enum.GetValues<HazardKind>()];

    /// <summary>Whatever is known of it: figure, time, source, limit.</summary>
    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_caution_has_title_line_and_words_of_its_own_in_each_language(HazardKind kind)
    {
        var hazard = Crosswind with { Kind = kind, About = "X" };
        foreach (var reader in new[] { Reader.Of(Field), Reader.Of(Field, language: Language.German) })
        {
            var all = Enum.GetValues<HazardKind>().Select(other => hazard with { Kind = other }).ToArray();
            var (title, text) = (HazardText.Title(kind, reader), HazardText.Of(hazard, Field, reader));
            Assert.False(string.IsNullOrWhiteSpace(title));
            Assert.Single(all, other => HazardText.Title(other, reader) == title);
            Assert.Single(all, other => HazardText.Of(other, Field, reader) == text);
            Assert.False(string.IsNullOrWhiteSpace(LineOf(hazard, reader).Text));
        }

        Assert.NotEqual(LineOf(hazard, Reader.Of(Field)).Text, LineOf(hazard, Reader.Of(Field, language: Language.German)).Text);
    }

    /// <summary>The key of the words in the table of Core is the code that programs read.</summary>
    [Theory]
    [MemberData(nameof(Kinds))]
    public void The_table_names_the_code_of_its_kind(HazardKind kind) =>
        Assert.Equal(Choice.NameOf(kind), CautionTable.All[kind].Words);

    /// <summary>About 48 characters of the page's type go into a line of a phone of 390 px: name, time and what to do in two at most.</summary>
    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_line_is_short(HazardKind kind)
    {
        foreach (var reader in new[] { Reader.Of(Field), Reader.Of(Field, language: Language.German) })
        {
            var line = LineOf(Crosswind with { Kind = kind }, reader);
            Assert.InRange($"{line.Title} {line.Time}: {line.Text}".Length, 20, 2 * 46);
        }
    }

    private static CautionLine LineOf(Hazard hazard, Reader reader) => CautionLine.Of(new(hazard.Kind, [hazard]), reader);
}
