using DayBrief.Soundings;
using DayBrief.Units;

namespace DayBrief.BoundaryLayer;

public sealed class LayerWindTests
{
    /// <summary>By hand: halfway between a west wind of 10 and a south wind of 10 the components are half each, so from
    /// 225° at 10/√2.</summary>
    [Fact]
    public void Between_reports_the_components_are_linear()
    {
        var wind = Winds((0, 270, 10), (1000, 180, 10)).At(Height.FromMetres(500))!.Value;
        Assert.Equal(225, wind.FromDegrees, tolerance: 0.5);
        Assert.Equal(10 / Math.Sqrt(2), wind.Speed.MetresPerSecond, tolerance: 0.05);
    }

    [Fact]
    public void Above_the_highest_report_the_wind_is_not_known() =>
        Assert.Null(Winds((0, 270, 10), (1000, 270, 20)).At(Height.FromMetres(1500)));

    /// <summary>By hand: the mean of a wind that grows evenly from 10 to 20 m/s is 15 m/s.</summary>
    [Fact]
    public void The_mean_of_an_even_growth_is_its_middle() =>
        Assert.Equal(15, Winds((0, 270, 10), (1000, 270, 20)).Mean(Height.FromMetres(1000)).Speed.MetresPerSecond, tolerance: 0.05);

    /// <summary>[FAA-25]: wind 30° off the runway at 25 kt has 22 kt along and 13 kt across (21.7 and 12.5).</summary>
    [Fact]
    public void Parts_along_and_across_a_runway_match_the_handbook()
    {
        var part = Days.RunwayWind.Of(new Days.Runway("09", 90), Wind.From(120, Speed.FromKnots(25)));
        Assert.Equal(21.7, part.Along.Knots, tolerance: 0.05);
        Assert.Equal(12.5, part.Across.Knots, tolerance: 0.05);
    }

    private static LayerWind Winds(params (double HeightM, double From, double Ms)[] reports)
    {
        var sounding = new Sounding
        {
            Source = new SoundingSource { Format = "test", Elevation = Altitude.FromMetres(0) },
            Levels =
            [
                new SoundingLevel { Pressure = Pressure.FromHectopascals(1000), Temperature = Temperature.FromCelsius(15) },
                new SoundingLevel { Pressure = Pressure.FromHectopascals(700), Temperature = Temperature.FromCelsius(0) },
            ],
            WindsByHeight = [.. reports.Select(report => new HeightWind(
                Altitude.FromMetres(report.HeightM), Wind.From(report.From, Speed.FromMetresPerSecond(report.Ms))))],
        };
        return LayerWind.Over(sounding, Profile.Of(sounding), groundM: 0)!;
    }
}
