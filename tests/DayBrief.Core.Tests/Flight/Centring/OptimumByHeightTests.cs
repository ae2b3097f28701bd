using DayBrief.Flight.Gliders;

namespace DayBrief.Flight.Centring;

public sealed class OptimumByHeightTests
{
    /// <summary>[Allen2006] equations 11 and 12: the updraft widens upwards, so the best circle is flatter at half the depth than low
    /// down; at three quarters the weak updraft of a weak day no longer carries and there is no answer.</summary>
    [Fact]
    public void Higher_up_the_best_circle_is_wider_until_none_climbs()
    {
        var strong = OptimumByHeight.LowMiddleTop(Scene.Strong, Scene.Standard);
        Assert.True(strong[1].RadiusM > strong[0].RadiusM);
        Assert.True(strong[1].Optimum!.Circle.BankDeg < strong[0].Optimum!.Circle.BankDeg);
        Assert.All(strong, each => Assert.NotNull(each.Optimum));
        Assert.Null(OptimumByHeight.LowMiddleTop(Scene.Make(1.5, 90, 1500, 500), GenericGlider.Of(GliderClass.EarlyTrainer))[2].Optimum);
    }
}
