using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>What a day says at its edges: heat, water, fog, times, heights.</summary>
public sealed class MiddleOfTheDayTests
{
    /// <summary>Energy: no ground gives the air more heat than the sun gives the ground. October sun at 39° north (Meeus: 40° high at noon)
    /// is about 600 W/m² on level ground; a maximum far beyond it is told, and its rest makes thermals no deeper.</summary>
    [Fact]
    public void A_maximum_beyond_the_sun_is_told_and_heats_no_further()
    {
        var site = Cases.SiteAt(39, -77.5, 88, -5);
        ConvectiveDay On(double celsius) => ConvectiveDay.Compute(
            ConvectiveDayTests.Morning(Cases.Utc("2026-10-20T11:00Z")), site, new(2026, 10, 20), new() { MaxTemperature = Temperature.FromCelsius(celsius), EnsembleSize = 0 });
        var (hot, hotter) = (On(30), On(33));
        Assert.True(hot.Steps.Max(step => step.SensibleHeatWm2) < 420);
        Assert.Contains(hot.Cautions, caution => caution.Code == "temperature-other-air" && caution.Text.ToString().StartsWith("Even the driest", StringComparison.Ordinal));
        Assert.Equal(hot.MaxDepth!.Value.Metres, hotter.MaxDepth!.Value.Metres, tolerance: 60);
        Assert.Equal(33, hotter.Steps.Max(step => step.SurfaceTemperatureC)!.Value, tolerance: 0.1);
    }

    /// <summary>Water: what leaves the layer by cumulus is no more than the cloud layer takes, and layer and cloud layer together hold
    /// what they had and what evaporated; 10⁻⁹ is rounding.</summary>
    [Fact]
    public void Cumulus_conserves_water_and_stops_when_the_cloud_layer_is_full()
    {
        var column = new BoundaryLayer.Column([0, 300, 1500, 6000], [290, 293, 297, 315], [0.008, 0.007, 0.005, 0.001]);
        var layer = new BoundaryLayer.MixedLayer(column, 0.2, 0, 10);
        const double room = 0.3;
        for (var i = 0; i < 1200; i++)
            layer.Advance(30, new(0.15, 5e-5, 0.05, 0.0005, CloudRoomQ: room));
        Assert.InRange(layer.CloudWater, 0.2 * room, room);
        Assert.Equal(5e-5 * 36000, (layer.State.Q * layer.DepthM) - column.At(layer.DepthM).QSum + layer.CloudWater, tolerance: 1e-9);
    }

    /// <summary>Physics: air saturated at the ground before the sun heats it is fog, not cumulus; it clears, and is told with when.</summary>
    [Fact]
    public void Fog_is_told_with_its_clearing_and_is_no_cumulus()
    {
        var day = ConvectiveDay.Compute(
            Cases.Ascent("fog", 0, Cases.Utc("2026-06-21T03:00Z"),
            [
                Cases.Level(1000, 10, 10), Cases.Level(990, 10.5, 10), Cases.Level(980, 14, 7), Cases.Level(900, 9, 2), Cases.Level(800, 2, -6), Cases.Level(500, -20, -40),
            ]),
            ConvectiveDayTests.Site(), new(2026, 6, 21), new() { EnsembleSize = 0 }, TestContext.Current.CancellationToken);
        Assert.True(day.Cloud.Low is { IsFog: true, Clears: not null });
        Assert.True(day.Times.FirstCloud is null || day.Times.FirstCloud > day.Cloud.Low!.Clears);
        Assert.Contains(day.Cloud.Reasons, reason => reason.ToString().StartsWith("Fog until about", StringComparison.Ordinal));
    }

    /// <summary>By definition: trigger and first usable thermal are one event, whatever the morning.</summary>
    [Fact]
    public void Trigger_and_first_usable_thermal_are_one_event()
    {
        var mixed = ConvectiveDay.Compute(
            Cases.Ascent("mixed", 0, Cases.Utc("2026-06-21T03:00Z"),
            [
                Cases.Level(1000, 16, 9), Cases.Level(920, 9.1, 7), Cases.Level(900, 12, 0), Cases.Level(800, 5, -8), Cases.Level(500, -18, -40),
            ]),
            ConvectiveDayTests.Site(), new(2026, 6, 21), new() { EnsembleSize = 0 }, TestContext.Current.CancellationToken);
        Assert.NotNull(mixed.Times.FirstUsable);
        Assert.Equal(mixed.Times.FirstUsable, mixed.Times.TriggerTime);
    }

    /// <summary>Smoothness: a site 20 cm higher or lower is the same site, at every difference to the station: the trigger moves by
    /// one step at most, the depth by 5 m.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(59.9)]
    [InlineData(60)]
    [InlineData(150)]
    [InlineData(-59.9)]
    public void Twenty_centimetres_move_nothing(double metres)
    {
        ConvectiveDay At(double elevation) => ConvectiveDay.Compute(
            ConvectiveDayTests.Morning(Cases.Utc("2026-06-21T03:00Z")), Cases.SiteAt(47.3, 8.5, elevation, 0), new(2026, 6, 21), new() { EnsembleSize = 0 });
        var (low, high) = (At(metres), At(metres + 0.2));
        Assert.InRange((high.Times.TriggerTime!.Value - low.Times.TriggerTime!.Value).TotalMinutes, -5, 5);
        Assert.Equal(low.MaxDepth!.Value.Metres, high.MaxDepth!.Value.Metres, tolerance: 5);
    }

    /// <summary>Type is smooth: a warmer maximum makes thermals no less broad, and its chance is told.</summary>
    [Fact]
    public void Warmer_days_never_turn_broad_into_short_lived()
    {
        var kinds = Enumerable.Range(0, 9).Select(i => ConvectiveDay.Compute(
            ConvectiveDayTests.Morning(Cases.Utc("2026-06-21T03:00Z")), ConvectiveDayTests.Site(), new(2026, 6, 21),
            new() { MaxTemperature = Temperature.FromCelsius(16 + i), EnsembleSize = 40 }, TestContext.Current.CancellationToken).ThermalType).ToArray();
        Assert.Equal(kinds.Select(type => type.Kind).Order(), kinds.Select(type => type.Kind));
        Assert.All(kinds, type => Assert.InRange(type.ChancePercent!.Value, 30, 100));
    }

    /// <summary>Subsidence with held air, directly integrated: dh/dt = w_e − D h, dθ/dt = (F + w_e Δθ)/h over a column that stays. 0.5 m and
    /// 0.005 K are what 1 s steps are good for.</summary>
    [Fact]
    public void Sinking_in_held_air_agrees_with_direct_integration()
    {
        const double gamma = 0.006, flux = 0.1, divergence = 1e-5;
        var layer = new BoundaryLayer.MixedLayer(new([0, 200, 200, 5000], [288, 288, 289, 289 + (gamma * 4800)], [0, 0, 0, 0]), 0.2, 0, 200, divergence);
        var (h, theta) = (200.0, 288.0);
        for (var t = 0; t < 36000; t++)
        {
            var above = 289 + (gamma * (h - 200));
            var rise = 0.2 * flux / (above - theta);
            (h, theta) = (h + rise - (divergence * h), theta + ((flux + (rise * (above - theta))) / h));
            if (t % 30 == 29)
                layer.Advance(30, new(flux, 0));
        }

        Assert.Equal(h, layer.DepthM, tolerance: 0.5);
        Assert.Equal(theta, layer.State.Theta, tolerance: 0.005);
    }
}
