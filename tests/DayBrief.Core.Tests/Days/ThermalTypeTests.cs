using DayBrief.Units;

namespace DayBrief.Days;

public sealed class ThermalTypeTests
{
    /// <summary>Two days drawn after the handbook's types [FAA-13A] chapter 9: dry air under a strong subsidence inversion
    /// at 900 m, and deep, moist air behind a front that hardly gains potential temperature with height.</summary>
    [Fact]
    public void A_dry_inversion_makes_short_lived_and_deep_unstable_air_broad_thermals()
    {
        var stable = Compute([
            Cases.Level(1000, 13, 3), Cases.Level(985, 17, 1), Cases.Level(905, 13, -8), Cases.Level(880, 19, -15),
            Cases.Level(700, 8, -25), Cases.Level(500, -10, -40)]);
        Assert.Equal(ThermalKind.ShortLived, stable.ThermalType.Kind);
        Assert.Equal("short-lived", stable.ThermalType.Name);
        Assert.True(stable.Cloud.Dry);
        Assert.Contains(stable.ThermalType.Reasons, reason => reason.ToString().StartsWith("Short-lived: ", StringComparison.Ordinal));

        var deep = Compute([
            Cases.Level(1000, 10, 6), Cases.Level(985, 11.5, 5), Cases.Level(850, 2, -1), Cases.Level(750, -6, -10),
            Cases.Level(700, -9.5, -15), Cases.Level(500, -27, -40), Cases.Level(400, -38, -50)]);
        Assert.Equal(ThermalKind.Broad, deep.ThermalType.Kind);
        Assert.False(deep.Cloud.Dry);
        Assert.False(deep.ThermalType.CappedLow);
    }

    /// <summary>By definition: the low cap is told when stable air ends thermals below 1000 m.</summary>
    [Fact]
    public void A_low_inversion_is_told()
    {
        var day = Compute([
            Cases.Level(1000, 10, 6), Cases.Level(985, 14, 6), Cases.Level(925, 13, 3), Cases.Level(895, 26, -5), Cases.Level(700, 12, -20), Cases.Level(500, -6, -40)]);
        Assert.True(day.MaxDepth < Height.FromMetres(1000));
        Assert.True(day.ThermalType.CappedLow);
        Assert.Contains(day.ThermalType.Reasons, reason => reason.ToString().StartsWith("Capped low", StringComparison.Ordinal));
    }

    /// <summary>[FAA-13A] chapter 9: one-directional wind that grows with height gives streets about three depths apart;
    /// a calm gives none; strong shear leans thermals over.</summary>
    [Fact]
    public void Wind_makes_streets_and_shear_makes_thermals_lean()
    {
        var streets = InWind(hpa => Wind.From(270, Speed.FromMetresPerSecond(10 + ((1000 - hpa) / 60))));
        Assert.True(streets.Wind!.StreetsLikely);
        Assert.Equal(3 * streets.Steps.Max(step => step.MixedLayerDepthM)!.Value, streets.Wind.StreetSpacing!.Value.Metres, tolerance: 1000);
        Assert.InRange(streets.Wind.InstabilityRatio!.Value, 0, 25);
        var calm = InWind(_ => Wind.From(270, Speed.FromMetresPerSecond(1)));
        Assert.False(calm.Wind!.StreetsLikely);
        Assert.True(calm.Wind.InstabilityRatio > 25);
        var sheared = InWind(hpa => Wind.From(270, Speed.FromMetresPerSecond((1000 - hpa) / 15)));
        Assert.True(sheared.ThermalType.Leaning);
        Assert.True(sheared.Wind!.TooMuch);
    }

    private static ConvectiveDay InWind(Func<double, Wind?> wind) => ConvectiveDay.Compute(
        ConvectiveDayTests.Morning(null, wind), ConvectiveDayTests.Site(), new(2026, 6, 21), new() { EnsembleSize = 0 });

    private static ConvectiveDay Compute(IEnumerable<Soundings.SoundingLevel> levels) => ConvectiveDay.Compute(
        Cases.Ascent("type", 0, null, levels), ConvectiveDayTests.Site(), new(2026, 6, 21), new() { EnsembleSize = 0 });
}
