using DayBrief.Units;

namespace DayBrief.Flight.Gliders;

public sealed class PolarTests
{
    private static readonly Polar Invented = Polar.Through(Point(80, 0.62), Point(110, 0.85), Point(150, 1.75));

    /// <summary>Computed independently for these three invented points; half the last digit.</summary>
    [Fact]
    public void Three_points_give_the_coefficients_of_the_reference()
    {
        Assert.Equal(0.00274629, Invented.A, tolerance: 5e-9);
        Assert.Equal(-0.11734286, Invented.B, tolerance: 5e-9);
        Assert.Equal(1.87142857, Invented.C, tolerance: 5e-9);
        Assert.Equal(76.9, Invented.MinimumSinkSpeed.KilometresPerHour, tolerance: 0.05);
        Assert.Equal(0.618, Invented.MinimumSinkMs, tolerance: 0.0005);
        Assert.Equal(94.0, Invented.BestGlideSpeedMs * 3.6, tolerance: 0.05);
        Assert.Equal(38.4, Invented.BestGlideRatio, tolerance: 0.05);
    }

    /// <summary>[FAA-13A]: with twice the weight every speed is √2 higher and the glide ratio stays.</summary>
    [Fact]
    public void A_heavier_glider_glides_as_far_but_faster()
    {
        var heavy = Invented.Heavier(2);
        Assert.Equal(Math.Sqrt(2), heavy.BestGlideSpeedMs / Invented.BestGlideSpeedMs, tolerance: 1e-12);
        Assert.Equal(Invented.BestGlideRatio, heavy.BestGlideRatio, tolerance: 1e-9);
    }

    [Fact]
    public void Points_on_a_line_or_of_one_speed_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Polar.Through(Point(80, 0.6), Point(100, 0.8), Point(120, 1.0)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Polar.Through(Point(80, 0.6), Point(80, 0.8), Point(120, 1.4)));
    }

    /// <summary>Common practice, no source: circling speeds 1.1 to 1.3 times the stall, glide ratios that rise with the class.</summary>
    [Fact]
    public void Generic_gliders_are_plausible_and_ordered()
    {
        var all = Enum.GetValues<GliderClass>().Select(GenericGlider.Of).ToArray();
        Assert.All(all, glider => Assert.InRange(glider.Polar.MinimumSinkSpeedMs / glider.Stall.MetresPerSecond, 1.05, 1.3));
        var ratios = all.Select(glider => glider.Polar.BestGlideRatio).ToArray();
        Assert.Equal(ratios.Order(), ratios);
        Assert.InRange(ratios[0], 18, 28);
        Assert.InRange(ratios[^1], 42, 55);
    }

    [Fact]
    public void Names_of_classes_go_both_ways() =>
        Assert.All(Enum.GetValues<GliderClass>(), each => Assert.Equal(each, GenericGlider.Named(GenericGlider.NameOf(each))));

    private static (Speed Speed, Speed Sink) Point(double kmh, double sink) =>
        (Speed.FromKilometresPerHour(kmh), Speed.FromMetresPerSecond(sink));
}
