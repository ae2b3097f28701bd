using DayBrief.House;
using DayBrief.Soundings;
using DayBrief.Units;
using DayBrief.Updrafts;

namespace DayBrief.Days;

/// <summary>The thermal that the flight computations take from the day agrees with what the brief says of the day.</summary>
public sealed class DayThermalTests
{
    /// <summary>Cloudy air goes through the base with w* [Neggers2006]; the strength at the height for which it is described is
    /// the day's, and the thermals are as far apart as in the layer itself.</summary>
    [Fact]
    public void A_thermal_that_feeds_cumulus_carries_to_the_base()
    {
        var day = Day("broad-post-frontal.txt", new(2026, 5, 21), 17);
        var (thermal, step) = (DayThermal.Of(day)!, DayThermal.StrongestStep(day)!);
        var top = step.CloudBaseAglM!.Value;
        Assert.Equal(top, step.UsableTopAglM);
        var wStar = step.ConvectiveVelocityScaleMs!.Value;
        Assert.Equal(wStar, thermal.At(Height.FromMetres(top)).CentreUpdraftMs, tolerance: 0.01 * wStar);
        var picked = PickedUpdraft.At(Speed.FromMetresPerSecond(wStar), thermal.Depth, thermal.Height, Height.FromMetres(top));
        Assert.Equal(picked.CoreMs, thermal.At(thermal.Height).CentreUpdraftMs, tolerance: 0.001);
        Assert.Equal(picked.RadiusM, thermal.At(thermal.Height).RadiusM, tolerance: 0.001);
        Assert.Equal(step.MixedLayerDepthM!.Value, thermal.Depth.Metres, tolerance: 0.001);
    }

    /// <summary>Without cumulus it ends with the layer.</summary>
    [Fact]
    public void A_dry_thermal_ends_in_the_layer()
    {
        var day = Day("anticyclone-short-dry.csv", new(2026, 6, 24), 25);
        var (thermal, depth) = (DayThermal.Of(day)!, DayThermal.StrongestStep(day)!.MixedLayerDepthM!.Value);
        Assert.Equal(depth, thermal.TopM, tolerance: 0.001);
        Assert.True(thermal.At(Height.FromMetres(0.9 * depth)).CentreUpdraftMs > 0);
        Assert.Equal(0, thermal.At(Height.FromMetres(depth)).CentreUpdraftMs);
    }

    /// <summary>Invented ascents, on the days of the demonstration.</summary>
    private static ConvectiveDay Day(string file, DateOnly date, double maxC) => Brief.Prepare(new()
    {
        Sounding = SoundingReader.Read(File.ReadAllBytes(Path.Combine(Repository.Root, "soundings", file)), file),
        Site = new()
        {
            Position = Position.FromDegrees(52.24, -1.41),
            Elevation = Altitude.FromMetres(118),
            TimeZone = TimeZoneInfo.FindSystemTimeZoneById("Europe/London"),
        },
        Date = date,
        Assumptions = new() { EnsembleSize = 0, MaxTemperature = Temperature.FromCelsius(maxC) },
        PreparedAt = default,
    }).Day;
}
