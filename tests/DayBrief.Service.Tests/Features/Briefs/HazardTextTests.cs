using DayBrief.Days;
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

    /// <summary>Whatever is known of it: figure, time, source, or nothing but its kind where a figure is not needed.</summary>
    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_caution_has_its_own_title_and_words_in_each_language(HazardKind kind)
    {
        var hazard = Crosswind with { Kind = kind, About = "X" };
        var english = Reader.Of(Field);
        var german = Reader.Of(Field, language: Language.German);
        Assert.NotEqual(HazardText.Of(hazard, Field, english), HazardText.Of(hazard, Field, german));
        Assert.False(string.IsNullOrWhiteSpace(HazardText.Title(hazard, german)));
        Assert.Single(Enum.GetValues<HazardKind>(), other => HazardTitle.Of(hazard with { Kind = other }) == HazardTitle.Of(hazard));
    }
}
