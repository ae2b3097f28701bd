using DayBrief.Thermodynamics;
using DayBrief.Units;

namespace DayBrief.Service.Charts;

/// <summary>[AMS] "tephigram": temperature and ln θ at right angles; "areas on the diagram are proportional to energy".</summary>
public sealed class TephigramScaleTests
{
    private static readonly TephigramScale Scale = new(size: 7, x: 100, y: 300);

    [Theory]
    [InlineData(-25, 500)]
    [InlineData(0, 1000)]
    [InlineData(18.4, 873)]
    [InlineData(35, 1030)]
    public void A_point_drawn_and_read_back_is_the_same(double celsius, double hpa)
    {
        var (c, p) = Scale.Back(Scale.At(celsius, hpa));
        Assert.Equal(celsius, c, tolerance: 1e-9);  // rounding only: the inverse is exact
        Assert.Equal(hpa, p, tolerance: 1e-8);
    }

    [Theory]
    [InlineData(20, 1000)]
    [InlineData(-10, 600)]
    public void Isotherms_and_dry_adiabats_cross_at_right_angles(double celsius, double hpa)
    {
        var at = Scale.At(celsius, hpa);
        var isotherm = Scale.At(celsius, 0.8 * hpa);
        var adiabat = Scale.At(Dry(celsius, hpa, 0.8 * hpa), 0.8 * hpa);
        var (ax, ay) = (isotherm.X - at.X, isotherm.Y - at.Y);
        var (bx, by) = (adiabat.X - at.X, adiabat.Y - at.Y);
        var cosine = ((ax * bx) + (ay * by)) / Math.Sqrt(((ax * ax) + (ay * ay)) * ((bx * bx) + (by * by)));
        Assert.Equal(0, cosine, tolerance: 1e-12);
    }

    [Fact]
    public void Air_that_follows_a_dry_adiabat_is_drawn_as_a_straight_line_up_to_the_left()
    {
        var (from, to) = (Scale.At(25, 1000), Scale.At(Dry(25, 1000, 700), 700));
        foreach (var hpa in new[] { 950.0, 900, 850, 800, 750 })
        {
            var at = Scale.At(Dry(25, 1000, hpa), hpa);
            var aside = ((to.X - from.X) * (at.Y - from.Y)) - ((to.Y - from.Y) * (at.X - from.X));
            Assert.Equal(0, aside, tolerance: 1e-8);
        }

        Assert.Equal(from.X - to.X, from.Y - to.Y, tolerance: 1e-9);  // 45°
        Assert.True(to.X < from.X && to.Y < from.Y);
    }

    [Fact]
    public void Isobars_lie_level_at_freezing_point_and_lower_pressure_lies_higher()
    {
        var slope = (Scale.At(0.01, 850).Y - Scale.At(-0.01, 850).Y) / (Scale.At(0.01, 850).X - Scale.At(-0.01, 850).X);
        Assert.Equal(0, slope, tolerance: 1e-6);
        Assert.True(Scale.At(0, 700).Y < Scale.At(0, 850).Y);
    }

    [Fact]
    public void Equal_areas_are_equal_energies()
    {
        // A closed cycle 0–10 °C between 900 and 800 hPa: ∮ T ds = R ∮ T d ln p = R (10 K) ln(900/800), whatever the
        // path drawn; per area the diagram must give c_p/T₀ for every such cycle (here a second one, elsewhere).
        var first = Area(0, 10, 900, 800) / (10 * Math.Log(900.0 / 800));
        var second = Area(-30, -10, 600, 450) / (20 * Math.Log(600.0 / 450));
        Assert.Equal(first, second, tolerance: 1e-3 * first);  // the isobars are cut into 400 straight pieces
        Assert.Equal(49 * Temperature.ZeroCelsius * Air.Kappa, first, tolerance: 1e-3 * first);  // 7² units² per K²
    }

    [Fact]
    public void An_isobar_is_found_at_any_place_across()
    {
        var at = Scale.OnIsobar(850, 140);
        Assert.Equal(140, at.X, tolerance: 1e-4);
        Assert.Equal(850, Scale.Back(at).Hpa, tolerance: 1e-4);
    }

    /// <summary>Poisson's equation [AMS], by hand.</summary>
    private static double Dry(double celsius, double fromHpa, double toHpa) =>
        ((celsius + 273.15) * Math.Pow(toHpa / fromHpa, 2.0 / 7)) - 273.15;

    private static double Area(double cold, double warm, double lowHpa, double highHpa)
    {
        Point[] round =
        [
            .. Enumerable.Range(0, 401).Select(i => Scale.At(cold + ((warm - cold) * i / 400), lowHpa)),
            .. Enumerable.Range(0, 401).Select(i => Scale.At(warm - ((warm - cold) * i / 400), highHpa)),
        ];
        return Math.Abs(round.Zip(round.Skip(1).Append(round[0]), (a, b) => (a.X * b.Y) - (b.X * a.Y)).Sum()) / 2;
    }
}
