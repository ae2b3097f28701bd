using DayBrief.Days;
using DayBrief.House;
using DayBrief.Reports;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Languages;
using DayBrief.Soundings;
using DayBrief.Units;

namespace DayBrief.Service.Features.Briefs;

/// <summary>The headline carries what decides, several clauses where several decide; the days are invented.</summary>
public sealed class DaySentenceTests
{
    private const string Storm = "TAF XXXX 180500Z 1806/1818 24010KT 9999 SCT040 TEMPO 1813/1816 25018G35KT 3000 TSRA BKN025CB";

    private static readonly Brief Thundery = Prepared("thunderstorm-risk.txt", new(2026, 7, 18), 29, Storm);

    /// <summary>Seen: "good thermals" with TSRA and gusts of 35 kt in the TAF. 13 UTC is 14:00 in British summer.</summary>
    [Fact]
    public void Thunder_and_gusts_of_the_forecast_stand_in_it_with_their_time()
    {
        var sentence = Of(Prepared("anticyclone-short-dry.csv", new(2026, 7, 18), 25, Storm));
        Assert.Contains("thunder 14:00–17:00", sentence, StringComparison.Ordinal);
        Assert.Contains("gusts to 35 kt 14:00–17:00", sentence, StringComparison.Ordinal);
    }

    /// <summary>Seen: "Broad, good thermals" in 43 kt of wind and with a lean of 65°.</summary>
    [Fact]
    public void Wind_that_makes_thermals_hardly_usable_stands_in_it() =>
        Assert.Contains("hardly usable in ", Of(Prepared("strong-wind-streets.json", new(2026, 4, 3), 12)), StringComparison.Ordinal);

    [Theory]
    [InlineData(0.19, false)]
    [InlineData(0.20, true)]
    [InlineData(0.37, true)]
    public void A_chance_of_no_thermal_from_twenty_per_cent_stands_in_it(double chance, bool told)
    {
        var brief = Thundery with { Day = Thundery.Day with { NoUsableThermalProbability = chance } };
        Assert.Equal(told, Of(brief).Contains($"a chance of {100 * chance:0} % that none comes", StringComparison.Ordinal));
    }

    [Fact]
    public void Overdevelopment_stands_in_it_beside_the_wind()
    {
        var windy = Prepared("strong-wind-streets.json", new(2026, 4, 3), 12);
        var sentence = Of(windy with { Day = windy.Day with { Cloud = windy.Day.Cloud with { Overdevelopment = windy.Day.Sun.Noon } } });
        Assert.Contains("hardly usable", sentence, StringComparison.Ordinal);
        Assert.Contains("clouds too tall from ", sentence, StringComparison.Ordinal);
    }

    /// <summary>Seen: "thermals from 11:15 …; clouds too tall from 09:45".</summary>
    [Fact]
    public void Clouds_that_grow_before_the_first_usable_thermal_are_told_from_it_on()
    {
        var windy = Prepared("strong-wind-streets.json", new(2026, 4, 3), 12);
        var early = windy.Day.Times.FirstUsable!.Value.AddHours(-1);
        var sentence = Of(windy with { Day = windy.Day with { Cloud = windy.Day.Cloud with { Overdevelopment = early } } });
        Assert.Contains("clouds too tall from the first thermal on", sentence, StringComparison.Ordinal);
        Assert.DoesNotContain($"{early:HH:mm}", sentence, StringComparison.Ordinal);
    }

    /// <summary>The knots say how strong; no ladder of adjectives.</summary>
    [Theory]
    [InlineData("broad-post-frontal.txt", 5, 21, 17)]
    [InlineData("anticyclone-short-dry.csv", 6, 24, 25)]
    [InlineData("strong-wind-streets.json", 4, 3, 12)]
    public void It_grades_no_strength(string file, int month, int day, double maxC)
    {
        var brief = Prepared(file, new(2026, month, day), maxC);
        Assert.DoesNotMatch("(?i)\\b(weak|fair|good|strong) ", Of(brief));
        Assert.DoesNotMatch("(?i)\\b(schwach|mäßig|gut|stark)e", Of(brief, Language.German));
    }

    private static string Of(Brief brief, Language? language = null) => DaySentence.Of(
        new(null, new() { SoundingId = "x", Site = SiteJson.Of(brief.Site), Date = brief.Date, PreparedAt = default }, brief),
        Reader.Of(brief.Site, language: language));

    private static Brief Prepared(string file, DateOnly date, double maxC, string? taf = null)
    {
        var sounding = SoundingReader.Read(File.ReadAllBytes(Path.Combine(Repository.Root, "soundings", file)), file);
        return Brief.Prepare(new()
        {
            Sounding = sounding.With(sounding.Source with { Elevation = Altitude.FromMetres(118) }),
            Site = new()
            {
                Position = Position.FromDegrees(52.24, -1.41),
                Elevation = Altitude.FromMetres(118),
                TimeZone = TimeZoneInfo.FindSystemTimeZoneById("Europe/London"),
                GroundCover = BoundaryLayer.GroundCover.Crops,
            },
            Date = date,
            Assumptions = new() { MaxTemperature = Temperature.FromCelsius(maxC), EnsembleSize = 0 },
            Forecast = taf is null ? null : TafReader.Read(taf),
            PreparedAt = default,
        });
    }
}
