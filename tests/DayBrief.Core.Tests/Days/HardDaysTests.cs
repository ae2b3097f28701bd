using System.Collections;
using System.Reflection;
using DayBrief.Soundings;
using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>Days and ascents at the edge: an answer in words, never a number that is none.</summary>
public sealed class HardDaysTests
{
    private static readonly DateOnly June = new(2026, 6, 21);
    private static readonly DateOnly December = new(2026, 12, 21);

    [Fact]
    public void Polar_night_has_no_thermals_and_says_so()
    {
        var day = Compute(site: Cases.SiteAt(78, 15, 0, 1), date: December);
        Assert.Null(day.MaxDepth);
        Assert.Null(day.MaxClimb);
        Assert.Contains("does not rise", day.ThermalType.Reasons[0].ToString());
        Assert.Contains(day.Cautions, caution => caution.Code == "polar-night");
        Assert.All(day.Steps, step => Assert.Null(step.MixedLayerDepthM));
    }

    [Fact]
    public void Polar_day_runs_from_midnight_to_midnight()
    {
        var day = Compute(site: Cases.SiteAt(78, 15, 0, 1), date: June);
        Assert.Contains(day.Cautions, caution => caution.Code == "polar-day");
        Assert.Equal(289, day.Steps.Length);
        Assert.NotNull(day.MaxDepth);
    }

    [Fact]
    public void Without_dew_points_cloud_is_unknown_and_the_rest_is_computed()
    {
        var dry = ConvectiveDayTests.Morning();
        var day = Compute(Cases.Ascent("dry", 0, null, dry.Levels.Select(level => level with { DewPoint = null })));
        Assert.True(day.Cloud.Unknown);
        Assert.NotNull(day.MaxDepth);
        Assert.All(day.Steps, step => Assert.True(step is { CondensationLevelAglM: null, CloudBaseAglM: null, MixedLayerMixingRatioGkg: null, CloudCoverOktas: null }));
    }

    [Fact]
    public void An_ascent_after_sunrise_leaves_what_came_before_unknown()
    {
        var at = Cases.Utc("2026-06-21T09:00Z");
        var day = Compute(ConvectiveDayTests.Morning(at));
        Assert.Contains(day.Cautions, caution => caution.Code == "ascent-after-sunrise");
        Assert.All(day.Steps.Where(step => step.Time < at.AddMinutes(-5)), step => Assert.Null(step.SurfaceTemperatureC));
        Assert.NotNull(day.Times.FirstUsable);
    }

    [Fact]
    public void An_ascent_later_than_the_day_gives_no_figures()
    {
        var day = Compute(ConvectiveDayTests.Morning(Cases.Utc("2026-06-22T00:00Z")));
        Assert.Null(day.MaxDepth);
        Assert.Contains(day.Cautions, caution => caution.Code == "ascent-too-late");
        Assert.Contains("later than the day", day.ThermalType.Reasons[0].ToString());
    }

    /// <summary>A site 300 m above or below the ascent's lowest level: depths count from the site's own ground. Above, the
    /// cold air of the night is cut off, so thermals reach as high above the sea or up to 350 m higher; below, 300 m of
    /// cold air must be warmed as well, which by the heat it takes (about 1.5 K over 300 m) costs up to 700 m.</summary>
    [Theory]
    [InlineData(300, "site-above-station", -50, 350)]
    [InlineData(-300, "site-below-station", -700, 0)]
    public void Sites_above_and_below_the_station_are_computed_and_told(double elevationM, string code, double from, double to)
    {
        var level = Compute();
        var day = Compute(site: Cases.SiteAt(47.3, 8.5, elevationM, 0));
        Assert.Contains(day.Cautions, caution => caution.Code == code);
        Assert.InRange(day.MaxDepth!.Value.Metres + elevationM, level.MaxDepth!.Value.Metres + from, level.MaxDepth.Value.Metres + to);
    }

    [Fact]
    public void A_site_above_the_ascent_is_refused() =>
        Assert.Equal(
            "site-above-ascent",
            Assert.Throws<InvalidSoundingException>(() => Compute(site: Cases.SiteAt(47.3, 8.5, 9500, 0))).Refusals[0].Code);

    [Fact]
    public void A_maximum_below_the_morning_gives_no_thermals()
    {
        var day = Compute(assumptions: new() { MaxTemperature = Temperature.FromCelsius(5), EnsembleSize = 20 });
        Assert.Null(day.Times.FirstUsable);
        Assert.Contains("No usable thermals", day.ThermalType.Reasons[0].ToString());
        Assert.Contains(day.Cautions, caution => caution.Code == "temperature-not-reached");
        Assert.Equal(1, day.NoUsableThermalProbability);
    }

    [Fact]
    public void A_shallow_ascent_says_that_thermals_outgrow_it()
    {
        var shallow = Cases.Ascent("shallow", 0, null, [Cases.Level(1000, 12, 8), Cases.Level(950, 9, 5), Cases.Level(900, 5, 2)]);
        var day = Compute(shallow);
        Assert.Contains(day.Cautions, caution => caution.Code == "top-of-ascent");
        Assert.InRange(day.MaxDepth!.Value.Metres, 500, 900);
    }

    /// <summary>Every number of every public member of a day, whatever the input: finite or null.</summary>
    [Theory]
    [MemberData(nameof(Hard))]
    public void No_public_number_is_ever_not_a_number(string name)
    {
        foreach (var (path, value) in Numbers(Named(name), "day", 0))
            Assert.True(double.IsFinite(value), $"{path} is {value}");
    }

    public static TheoryData<string> Hard() =>
        ["plain", "polar night", "polar day", "dry", "late", "too late", "cold maximum", "hot maximum", "overcast", "still flux", "much wind", "equator of the year 1900"];

    private static ConvectiveDay Named(string name)
    {
        var ensemble = new DayAssumptions { EnsembleSize = 20 };
        var start = Cases.Utc("2026-06-21T06:00Z");
        return name switch
        {
            "polar night" => Compute(site: Cases.SiteAt(78, 15, 0, 1), date: December, assumptions: ensemble),
            "polar day" => Compute(site: Cases.SiteAt(89.9, 15, 0, 1), assumptions: ensemble),
            "dry" => Compute(Cases.Ascent("dry", null, null, ConvectiveDayTests.Morning().Levels.Select(level => level with { DewPoint = null })), assumptions: ensemble),
            "late" => Compute(ConvectiveDayTests.Morning(Cases.Utc("2026-06-21T12:00Z")), assumptions: ensemble),
            "too late" => Compute(ConvectiveDayTests.Morning(Cases.Utc("2026-06-23T12:00Z")), assumptions: ensemble),
            "cold maximum" => Compute(assumptions: ensemble with { MaxTemperature = Temperature.FromCelsius(-30) }),
            "hot maximum" => Compute(assumptions: ensemble with { MaxTemperature = Temperature.FromCelsius(55) }),
            "overcast" => Compute(assumptions: ensemble with { CloudOktas = 8 }),
            "still flux" => Compute(assumptions: ensemble with { Flux = new([new(start, 0, 0), new(start.AddHours(6), 0, 0)]) }),
            "much wind" => Compute(ConvectiveDayTests.Morning(null, hpa => Wind.From(270, Speed.FromKnots(10 + ((1000 - hpa) / 10)))), assumptions: ensemble),
            "equator of the year 1900" => Compute(site: Cases.SiteAt(0, 179.9, 0, 12), date: new(1900, 3, 21), assumptions: ensemble),
            _ => Compute(assumptions: ensemble),
        };
    }

    private static ConvectiveDay Compute(
        Sounding? sounding = null, Site? site = null, DateOnly? date = null, DayAssumptions? assumptions = null) =>
        ConvectiveDay.Compute(
            sounding ?? ConvectiveDayTests.Morning(), site ?? ConvectiveDayTests.Site(), date ?? June, assumptions ?? new() { EnsembleSize = 0 });

    private static IEnumerable<(string Path, double Value)> Numbers(object? value, string path, int depth)
    {
        if (value is double number)
            yield return (path, number);
        if (value is null or string or DateTimeOffset or DateOnly or TimeOnly or TimeZoneInfo or Enum || value.GetType().IsPrimitive || depth > 6)
            yield break;
        if (value is IEnumerable items)
        {
            foreach (var item in items)
            {
                foreach (var found in Numbers(item, path + "[]", depth + 1))
                    yield return found;
            }

            yield break;
        }

        foreach (var property in value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance))
        {
            if (property.GetIndexParameters().Length > 0)
                continue;
            foreach (var found in Numbers(property.GetValue(value), $"{path}.{property.Name}", depth + 1))
                yield return found;
        }
    }
}
