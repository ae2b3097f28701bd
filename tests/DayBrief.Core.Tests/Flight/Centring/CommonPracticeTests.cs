namespace DayBrief.Flight.Centring;

/// <summary>What pilots are taught (common practice, no source) as check values of the simulation, at 30–40° of bank with a usual
/// instrument unless said. Where the simulation disagrees it is not bent: docs/verification.md.</summary>
public sealed class CommonPracticeTests
{
    public static TheoryData<double> Banks => [30, 38];

    [Theory]
    [MemberData(nameof(Banks))]
    public void Levelling_after_270_degrees_regains_a_thermal_missed_by_turning_the_wrong_way(double bank)
    {
        foreach (var thermal in new[] { Scene.Medium, Scene.Strong, Scene.Narrow })
        {
            var scene = new Scene(thermal, bank);
            var levelled = scene.Fly(CentringWay.LevelAfter270, scene.Numbers with { LevelS = 2 });
            var held = scene.Fly(CentringWay.Hold);
            Assert.True(Scene.Climb(levelled, scene.TurnedTheWrongWay) > Scene.Climb(held, scene.TurnedTheWrongWay) + 0.1);
            Assert.True(Scene.LostPct(levelled, scene.TurnedTheWrongWay) <= Scene.LostPct(held, scene.TurnedTheWrongWay));
        }
    }

    [Theory]
    [MemberData(nameof(Banks))]
    public void Reversing_the_turn_is_worse_than_holding_or_levelling_after_270(double bank)
    {
        foreach (var thermal in new[] { Scene.Medium, Scene.Strong, Scene.Narrow, Scene.Broad, Scene.ShortLived })
        {
            var scene = new Scene(thermal, bank);
            var reversed = Scene.Climb(scene.Fly(CentringWay.Reverse), scene.TurnedTheWrongWay);
            Assert.True(reversed < Scene.Climb(scene.Fly(CentringWay.Hold), scene.TurnedTheWrongWay));
            Assert.True(reversed < Scene.Climb(scene.Fly(CentringWay.LevelAfter270), scene.TurnedTheWrongWay));
        }
    }

    /// <summary>"Corrections centre in about 4 to 7 turns", in a thermal about twice as wide as the circle, by the circle's centre that comes
    /// near and stays for a turn.</summary>
    [Fact]
    public void Corrections_centre_in_about_four_to_seven_turns()
    {
        var ranking = CentringStudy.Run(Scene.Narrow, Scene.Standard, Instruments.Variometer.Usual, new() { WithErrors = false }).Ranking;
        Assert.InRange(ranking.Single(way => way.Way == CentringWay.StraightenAndShift).TurnsToCentre!.Value, 4, 7);
    }

    [Theory]
    [MemberData(nameof(Banks))]
    public void In_a_broad_thermal_with_a_large_swing_the_big_step_beats_small_corrections_by_far(double bank)
    {
        var scene = new Scene(Scene.Broad, bank);
        var held = scene.Fly(CentringWay.Hold);
        bool FarOut(int encounter) => held.FirstOffset[encounter] > 0.7;
        var step = Scene.Climb(scene.Fly(CentringWay.StraightenAndShift), FarOut);
        Assert.True(step > Scene.Climb(scene.Fly(CentringWay.TightenAndEase), FarOut) + 0.3);
    }

    [Theory]
    [MemberData(nameof(Banks))]
    public void In_a_narrow_thermal_a_long_straight_stretch_loses_it_more_often_than_a_short_one(double bank)
    {
        var scene = new Scene(Scene.Narrow, bank);
        double Lost(double levelS) => Scene.LostPct(scene.Fly(CentringWay.StraightenAndShift, scene.Numbers with { LevelS = levelS }));
        Assert.True(Lost(6) > Lost(0) + 2);
    }

    [Theory]
    [MemberData(nameof(Banks))]
    public void In_a_short_lived_thermal_turning_in_the_lift_beats_searching_first(double bank)
    {
        var scene = new Scene(Scene.ShortLived, bank);
        var surge = scene.Fly(CentringWay.TurnOnSurge, scene.Numbers with { AfterSurgeS = 4 });
        var searching = scene.Fly(CentringWay.TurnOnSurge, scene.Numbers with { AfterSurgeS = 12 });
        Assert.True(Scene.Climb(surge) > Scene.Climb(searching) + 0.1);
        Assert.True(Scene.LostPct(surge) < Scene.LostPct(searching));
    }

    [Fact]
    public void Correcting_late_and_rolling_sloppily_cost_climb()
    {
        var result = CentringStudy.Run(Scene.Narrow, Scene.Standard, Instruments.Variometer.Usual);
        var errors = result.Ranking.Single(way => way.Way == CentringWay.StraightenAndShift).Errors;
        Assert.True(errors.Single(each => each.Error == PilotError.Late).ClimbLostMs is var late && late.Mean > late.HalfWidth95, $"late {late}");
        Assert.True(errors.Single(each => each.Error == PilotError.SloppyRoll).ClimbLostMs is var sloppy && sloppy.Mean > sloppy.HalfWidth95, $"sloppy {sloppy}");
    }
}
