using DayBrief.Soundings;
using DayBrief.Thermodynamics;
using DayBrief.Units;

namespace DayBrief.Days;

public sealed class ConvectiveDayTests
{
    private static readonly DateOnly June = new(2026, 6, 21);

    /// <summary>[Tennekes1973] through the whole day: constant flux over 5 K/km from the ground, dry:
    /// h² = 2 (1 + 2A) ∫F dt/γ. 1 % as asked for, after the first hour.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(0.2)]
    public void A_linear_profile_under_constant_heat_grows_analytically(double entrainment)
    {
        const double gamma = 0.005, heat = 200;
        var start = Cases.Utc("2026-06-21T06:00Z");
        var flux = new FluxSeries([new(start, heat, 0), new(start.AddHours(9), heat, 0)]);
        var day = ConvectiveDay.Compute(
            Linear(gamma, start), Site(), June, new() { Flux = flux, EntrainmentRatio = entrainment, EnsembleSize = 0 }, TestContext.Current.CancellationToken);
        // Kinematic flux of potential temperature: H/(ρ c_p) over the ratio of temperature to potential temperature.
        var density = 100_000 / (Air.GasConstant * 290);
        foreach (var step in day.Steps.Where(step => step.Time >= start.AddHours(1) && step.Time <= start.AddHours(9)))
        {
            var seconds = (step.Time - start).TotalSeconds;
            var expected = Math.Sqrt(2 * (1 + (2 * entrainment)) * heat / (density * Air.SpecificHeat) * seconds / gamma);
            Assert.Equal(expected, step.MixedLayerDepthM!.Value, tolerance: 0.01 * expected);
        }
    }

    /// <summary>By definition: a maximum that is asked for is reached, by the screen or by the stirred layer; 0.05 K is
    /// the accuracy of the scaling.</summary>
    [Fact]
    public void The_maximum_asked_for_is_reached()
    {
        var screen = Day(new() { MaxTemperature = Temperature.FromCelsius(25), EnsembleSize = 0 });
        Assert.Equal(25, screen.Steps.Max(step => step.SurfaceTemperatureC)!.Value, tolerance: 0.05);
        var mixed = Day(new() { MixedTemperature = Temperature.FromCelsius(25), EnsembleSize = 0 });
        var warmest = mixed.Steps.Max(step => step.MixedLayerThetaK)!.Value;
        Assert.Equal(25, (warmest * Math.Pow(1.0, Air.Kappa)) - 273.15, tolerance: 0.05);
        Assert.True(mixed.MaxDepth > screen.MaxDepth, "the same temperature of the layer itself means more heat");
    }

    /// <summary>By definition of the check: both temperatures and their difference are told when they differ by 2 K.</summary>
    [Fact]
    public void A_maximum_that_the_sun_does_not_give_is_told_with_the_difference()
    {
        var free = Day(new() { EnsembleSize = 0 }).Steps.Max(step => step.SurfaceTemperatureC)!.Value;
        var day = Day(new() { MaxTemperature = Temperature.FromCelsius(free - 5), EnsembleSize = 0 });
        Assert.Equal(-5, day.Temperatures!.Disagreement!.Value.Kelvins, tolerance: 1);
        Assert.InRange(day.Temperatures.HeatFactor, 0.05, 0.9);
        Assert.Contains("5", Assert.Single(day.Cautions, caution => caution.Code == "temperature-disagreement").Text.ToString());
    }

    /// <summary>Physics: more cloud, wetter ground, warmer air aloft and sinking air each make thermals less deep.</summary>
    [Fact]
    public void What_takes_heat_away_makes_thermals_less_deep()
    {
        var plain = Day(new() { EnsembleSize = 0 }).MaxDepth!.Value;
        Assert.True(Day(new() { CloudOktas = 7, EnsembleSize = 0 }).MaxDepth < plain);
        Assert.True(Day(new() { DivergencePerSecond = 1e-5, EnsembleSize = 0 }).MaxDepth < plain);
        var wet = ConvectiveDay.Compute(
            Morning(), Site() with { GroundWetness = BoundaryLayer.GroundWetness.Soaked }, June, new() { EnsembleSize = 0 }, TestContext.Current.CancellationToken);
        Assert.True(wet.MaxDepth < plain);
    }

    /// <summary>By definition of the key times, which must come in this order.</summary>
    [Fact]
    public void Key_times_come_in_order()
    {
        var times = Day(new() { EnsembleSize = 0 }).Times;
        Assert.True(times.TriggerTime <= times.FirstUsable);
        Assert.True(times.FirstUsable <= times.BestFrom && times.BestFrom < times.BestTo);
        Assert.True(times.BestTo <= times.Decline && times.BestTo <= times.Last);
    }

    /// <summary>Contract: a step every 5 minutes of local time, over the clock change too.</summary>
    [Theory]
    [InlineData("2026-06-21")]
    [InlineData("2026-03-29")]
    public void Steps_lie_five_minutes_apart_on_the_clock(string date)
    {
        var zone = TimeZoneInfo.FindSystemTimeZoneById("Europe/Zurich");
        var day = ConvectiveDay.Compute(Morning(null), Site() with { TimeZone = zone }, DateOnly.Parse(date), new() { EnsembleSize = 0 }, TestContext.Current.CancellationToken);
        Assert.All(day.Steps, step => Assert.Equal(0, step.Time.Minute % 5 + step.Time.Second));
        Assert.All(day.Steps.Zip(day.Steps.Skip(1)), pair => Assert.Equal(5, (pair.Second.Time - pair.First.Time).TotalMinutes));
        Assert.True(day.Steps[0].Time <= day.Sun.Sunrise && day.Steps[^1].Time >= day.Sun.Sunset);
    }

    /// <summary>Determinism: the same seed gives the same figures, another seed others.</summary>
    [Fact]
    public void The_same_seed_gives_the_same_ranges()
    {
        var first = Day(new() { EnsembleSize = 60, Seed = 7 });
        Assert.Equal(first.Ranges, Day(new() { EnsembleSize = 60, Seed = 7 }).Ranges);
        Assert.NotEqual(first.Ranges, Day(new() { EnsembleSize = 60, Seed = 8 }).Ranges);
    }

    /// <summary>By definition of percentiles, for every headline figure that exists.</summary>
    [Fact]
    public void Ranges_rise_and_hold_the_central_day()
    {
        var day = Day(new() { EnsembleSize = 200 });
        Assert.True(day.Ranges!.MaxDepthM.P10 < day.MaxDepth!.Value.Metres && day.MaxDepth.Value.Metres < day.Ranges.MaxDepthM.P90);
        Assert.True(day.Ranges.MaxClimbMs.P10 <= day.Ranges.MaxClimbMs.P50 && day.Ranges.MaxClimbMs.P50 <= day.Ranges.MaxClimbMs.P90);
        Assert.True(day.Ranges.TriggerTime.P10 <= day.Ranges.TriggerTime.P50 && day.Ranges.TriggerTime.P50 <= day.Ranges.TriggerTime.P90);
        Assert.InRange(day.NoUsableThermalProbability!.Value, 0, 0.2);
        Assert.Equal(2, day.WhatMatters.Length);
        Assert.All(day.WhatMatters, matters => Assert.Matches("(costs|gains) about [0-9,]+ ft of depth$", matters.Words.In(SiteUnits.FeetAndKnots)));
    }

    internal static Site Site() => Cases.SiteAt(47.3, 8.5, 0, 0) with { Id = "test" };

    internal static Sounding Morning(DateTimeOffset? validAt = null, Func<double, Wind?>? wind = null) => Cases.Ascent(
        "morning",
        0,
        validAt,
        [
            Cases.Level(1000, 12, 10, wind?.Invoke(1000)), Cases.Level(985, 15, 10, wind?.Invoke(985)),
            Cases.Level(925, 12.5, 6, wind?.Invoke(925)), Cases.Level(850, 7.5, 1, wind?.Invoke(850)),
            Cases.Level(780, 3, -6, wind?.Invoke(780)), Cases.Level(700, -1, -15, wind?.Invoke(700)),
            Cases.Level(500, -17, -35, wind?.Invoke(500)), Cases.Level(300, -45, -60, wind?.Invoke(300)),
        ]);

    private static ConvectiveDay Day(DayAssumptions assumptions) =>
        ConvectiveDay.Compute(Morning(Cases.Utc("2026-06-21T03:00Z")), Site(), June, assumptions);

    /// <summary>θ rising linearly with height from 290 K at 1000 hPa, hydrostatic, in 50 m steps.</summary>
    private static Sounding Linear(double gamma, DateTimeOffset validAt)
    {
        double Exner(double z) => 1 - (Air.Gravity / Air.SpecificHeat / gamma * Math.Log(1 + (gamma * z / 290)));
        return Cases.Ascent("linear", 0, validAt, Enumerable.Range(0, 120).Select(i => i * 50.0).Select(z =>
            Cases.Level(1000 * Math.Pow(Exner(z), 1 / Air.Kappa), ((290 + (gamma * z)) * Exner(z)) - 273.15)));
    }
}
