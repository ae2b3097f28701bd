using System.Text.Json;
using DayBrief.Flight.Gliders;
using DayBrief.Flight.Instruments;
using DayBrief.Units;

namespace DayBrief.Flight.Centring;

public sealed class CentringStudyTests
{
    private static readonly CentringOptions Small = new() { Encounters = 256, Seed = 11 };

    private static readonly CentringResult Today = CentringStudy.Run(Scene.Medium, Scene.Standard, Variometer.Usual, Small);

    /// <summary>The house's rule: same seed, same bytes, however many threads.</summary>
    [Fact]
    public void The_same_seed_gives_the_same_bytes_on_any_number_of_threads()
    {
        var once = JsonSerializer.Serialize(Today);
        Assert.Equal(once, JsonSerializer.Serialize(CentringStudy.Run(Scene.Medium, Scene.Standard, Variometer.Usual, Small with { Threads = 1 })));
        Assert.Equal(once, JsonSerializer.Serialize(CentringStudy.Run(Scene.Medium, Scene.Standard, Variometer.Usual, Small with { Threads = 7 })));
        Assert.NotEqual(once, JsonSerializer.Serialize(CentringStudy.Run(Scene.Medium, Scene.Standard, Variometer.Usual, Small with { Seed = 12 })));
    }

    [Fact]
    public void Several_gliders_together_give_what_each_gives_alone()
    {
        var both = CentringStudy.RunAll(Scene.Medium, [GenericGlider.Of(GliderClass.Open), Scene.Standard], Variometer.Usual, Small, null, TestContext.Current.CancellationToken);
        Assert.Equal(JsonSerializer.Serialize(Today), JsonSerializer.Serialize(both[1]));
    }

    [Fact]
    public void Every_way_is_ranked_once_the_best_first()
    {
        Assert.Equal(CentringWays.SimplestFirst.Order(), Today.Ranking.Select(way => way.Way).Order());
        var climbs = Today.Ranking.Select(way => way.Climb3MinMs.Mean).ToArray();
        Assert.Equal(climbs.OrderDescending(), climbs);
        Assert.Equal(0, Today.Ranking[0].BehindBestMs.Mean);
        Assert.All(Today.Ranking, way => Assert.InRange(way.LostPct.Mean, 0, 100));
    }

    /// <summary>The rule for ties: of the ways that cannot be told from the best the simplest is given; levelling after 270°,
    /// which is for the wrong turn alone, and reversing never are.</summary>
    [Theory]
    [InlineData(2.5, 120)]
    [InlineData(3, 70)]
    [InlineData(1, 400)]
    public void Of_tied_ways_the_simplest_is_given(double core, double radius)
    {
        var result = CentringStudy.Run(Scene.Make(core, radius, 1500, 600), Scene.Standard, Variometer.Usual, Small with { WithErrors = false });
        var near = result.Ranking.Where(way => way.Way != CentringWay.Reverse && way.BehindBestMs.Mean <= way.BehindBestMs.HalfWidth95).Select(way => way.Way).Order().ToArray();
        Assert.Equal(near.First(way => way != CentringWay.LevelAfter270), result.Recommended);
        Assert.Equal(near.Length > 1 ? near : [], result.Tied);
    }

    /// <summary>No encounter can climb better on average than the best centred circle, but for what the height's change of the
    /// thermal gives (a tenth) and the gusts' mean.</summary>
    [Fact]
    public void No_way_climbs_better_than_the_best_centred_circle() =>
        Assert.All(Today.Ranking, way => Assert.True(way.Climb5MinMs.Mean < Today.Optimum.ClimbMs + 0.1));

    /// <summary>r = V²/(g·tan φ): at the same bank 5 kt more widens the circle by (V+5)²/V² − 1, whatever the simulation says.</summary>
    [Fact]
    public void Entry_costs_grow_with_the_error_and_have_the_kinematic_radius()
    {
        var (five, ten) = (Today.EntryCosts.Single(cost => cost.What == "+5 kt"), Today.EntryCosts.Single(cost => cost.What == "+10 kt"));
        var knots = Today.Circle.Speed.Knots;
        Assert.Equal(((Math.Pow((knots + 5) / knots, 2)) - 1) * Today.Circle.RadiusM, five.RadiusGrowthM, tolerance: 1e-6);
        Assert.True(ten.CentredClimbLostMs > five.CentredClimbLostMs && five.CentredClimbLostMs > 0);
        Assert.True(ten.Climb3MinLostMs.Mean > five.Climb3MinLostMs.Mean);
        Assert.Equal(5, Today.EntryCosts.Count);
    }

    [Fact]
    public void Bank_and_speed_are_flown_as_given()
    {
        var result = CentringStudy.Run(
            Scene.Medium, Scene.Standard, Variometer.Usual, Small with { BankDeg = 33, Speed = Speed.FromKnots(50), WithErrors = false });
        Assert.Equal(33, result.Circle.BankDeg);
        Assert.Equal(50, result.Circle.Speed.Knots, tolerance: 1e-9);
    }

    /// <summary>Never anything but a number or null: JSON refuses NaN and infinity. Corners of the accepted ranges, and between them.</summary>
    [Fact]
    public void Every_accepted_thermal_gives_numbers()
    {
        var random = Numerics.CounterRandom.FromSeed(2);
        for (var each = 0; each < 24; each++)
        {
            var draw = random.Stream(each);
            var depth = Between(draw, 0, 100, 10_000);
            var thermal = Scene.Make(
                Between(draw, 1, 0.1, 20), Between(draw, 2, 10, 2000), depth, Between(draw, 3, 20, depth), each % 2 == 0 ? null : Between(draw, 4, 1, 60), Between(draw, 5, -30, 30));
            var glider = GenericGlider.Of((GliderClass)(each % 5));
            Assert.NotEmpty(JsonSerializer.Serialize(CentringStudy.Run(thermal, glider, new(each % 4), new() { Encounters = 64 })));
        }

        static double Between(Numerics.CounterRandom draw, int index, double from, double to) =>
            draw.Uniform(index) is var u && u < 0.15 ? from : u > 0.85 ? to : from + ((to - from) * u);
    }

    [Fact]
    public void Impossible_options_are_refused()
    {
        Refused(new() { BankDeg = 80 });
        Refused(new() { Encounters = 1 });
        Refused(new() { Threads = 0 });
        Refused(new() { BankDeg = 45, Speed = Speed.FromKnots(30) });

        static void Refused(CentringOptions options) => Assert.Throws<ArgumentOutOfRangeException>(
            () => CentringStudy.Run(Scene.Medium, Scene.Standard, Variometer.Usual, options));
    }

    [Fact]
    public void A_study_can_be_stopped()
    {
        using var stopped = new CancellationTokenSource();
        stopped.Cancel();
        Assert.Throws<OperationCanceledException>(
            () => CentringStudy.RunAll(Scene.Medium, [Scene.Standard], Variometer.Usual, Small, null, stopped.Token));
    }
}
