using DayBrief.Soundings;
using DayBrief.Units;

namespace DayBrief.Days;

public sealed class DayAssumptionsTests
{
    [Fact]
    public void Winds_out_of_order_are_refused() =>
        Assert.Throws<ArgumentException>(() => new DayAssumptions { WindByHour = [At(14), At(9)] });

    [Fact]
    public void A_gust_below_the_mean_wind_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new WindFrom(new(9, 0), Wind.From(90, Speed.FromKnots(20)), Speed.FromKnots(19)));

    [Theory]
    [InlineData(849)]
    [InlineData(1101)]
    public void An_impossible_QNH_is_refused(double hpa) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new DayAssumptions { Qnh = Pressure.FromHectopascals(hpa) });

    /// <summary>[ICAO7488] table: 954.61 hPa at 500 m and 898.75 hPa at 1000 m where QNH is 1013.25 hPa; printed to 0.01 hPa,
    /// which is 0.1 m of height.</summary>
    [Theory]
    [InlineData(500, 954.61)]
    [InlineData(1000, 898.75)]
    public void The_density_altitude_follows_QNH(double elevationM, double fieldHpa)
    {
        var brief = Brief.Prepare(new()
        {
            Sounding = SoundingReader.Read(File.ReadAllBytes(Path.Combine(House.Repository.Root, "soundings", "broad-post-frontal.txt")), "broad-post-frontal.txt"),
            Site = Cases.SiteAt(52, -1, elevationM, 0),
            Date = new(2026, 5, 21),
            Assumptions = new() { Qnh = Pressure.FromHectopascals(1013.25), EnsembleSize = 0 },
            PreparedAt = default,
        });
        var expected = Thermodynamics.DensityAltitude.Of(Pressure.FromHectopascals(fieldHpa), brief.MaxTemperature!.Value);
        Assert.Equal(expected.Metres, brief.DensityAltitude!.Value.Metres, tolerance: 0.1);
    }

    private static WindFrom At(int hour) => new(new(hour, 0), Wind.From(90, Speed.FromKnots(5)));
}
