using DayBrief.Days;
using DayBrief.House;
using DayBrief.Reports;
using DayBrief.Service.Features.Sites;
using DayBrief.Soundings;
using DayBrief.Units;

namespace DayBrief.Service.Features.Briefs;

/// <summary>"Not known" never stands beside data that give it.</summary>
public sealed class UnknownsTests
{
    private static readonly DateOnly Date = new(2026, 6, 24);

    [Fact]
    public void Gusts_and_visibility_are_not_known_without_any_report()
    {
        var unknown = Of(null, new());
        Assert.Contains(unknown, line => line.StartsWith("Gusts", StringComparison.Ordinal));
        Assert.Contains(unknown, line => line.StartsWith("Visibility", StringComparison.Ordinal));
        Assert.Contains(unknown, line => line.Contains("the sky is taken as clear", StringComparison.Ordinal));
    }

    [Fact]
    public void A_forecast_that_gives_them_makes_them_known() =>
        Assert.DoesNotContain(
            Of("TAF XXXX 240500Z 2406/2418 24012G25KT 9999 SCT040", new()),
            line => line.StartsWith("Gusts", StringComparison.Ordinal) || line.StartsWith("Visibility", StringComparison.Ordinal));

    [Fact]
    public void Cloud_by_the_hour_is_a_sky_that_is_not_taken_as_clear() =>
        Assert.DoesNotContain(
            Of(null, new() { CloudByHour = [new(new(9, 0), 4)] }), line => line.Contains("the sky is taken as clear", StringComparison.Ordinal));

    private static string[] Of(string? taf, DayAssumptions assumptions)
    {
        const string file = "anticyclone-short-dry.csv";
        var brief = Brief.Prepare(new()
        {
            Sounding = SoundingReader.Read(File.ReadAllBytes(Path.Combine(Repository.Root, "soundings", file)), file),
            Site = new()
            {
                Position = Position.FromDegrees(52.24, -1.41),
                Elevation = Altitude.FromMetres(118),
                TimeZone = TimeZoneInfo.FindSystemTimeZoneById("Europe/London"),
            },
            Date = Date,
            Assumptions = assumptions with { EnsembleSize = 0 },
            Forecast = taf is null ? null : TafReader.Read(taf),
            PreparedAt = default,
        });
        var inputs = new BriefInputs { SoundingId = "x", Site = SiteJson.Of(brief.Site), Date = Date, PreparedAt = default };
        return [.. Unknowns.Of(new(null, inputs, brief), Reader.Of(brief.Site))];
    }
}
