using DayBrief.Flight.Instruments;
using DayBrief.Flight.Thermals;
using DayBrief.Numerics.Lanes;

namespace DayBrief.Flight.Centring.Kernel;

/// <summary>The kernel's air against the double-precision thermal, which [Allen2006] checks.</summary>
public sealed class ColumnTests
{
    /// <summary>Single precision and the shape row of the thermal's own height: a thousandth of the core.</summary>
    [Theory]
    [InlineData(2.5, 120, 1500, 600, ThermalForm.Average)]
    [InlineData(3, 300, 3000, 2000, ThermalForm.Average)]
    [InlineData(5, 500, 3000, 1000, ThermalForm.Average)]
    [InlineData(2, 700, 4000, 3000, ThermalForm.Average)]
    [InlineData(2.5, 220, 1500, 600, ThermalForm.Picked)]
    [InlineData(3, 300, 3000, 2600, ThermalForm.Picked)]
    [InlineData(5, 500, 3000, 200, ThermalForm.Picked)]
    public void The_kernels_air_is_the_thermals(double core, double radius, double depth, double height, ThermalForm form)
    {
        var thermal = Scene.Make(core, radius, depth, height, form: form);
        var state = Quiet(thermal);
        var updraft = thermal.At(thermal.Height);
        for (var distance = 0.0; distance < 3 * radius; distance += 0.043 * radius)
        {
            var x = Lane1.Of((float)distance);
            var kernel = new Column(thermal).Updraft(ref state, x, Lane1.Of(0), x * x).Value;
            Assert.Equal(updraft.UpdraftMs(distance), kernel, tolerance: 0.001 * core);
        }
    }

    /// <summary>Common practice, no source: a circle off the axis is drawn in low down and carried out near the top. The model's
    /// continuity says the same with numbers: after ten turns the centre has moved by v_r·time, about 5 to 20 m here.</summary>
    [Theory]
    [InlineData(100, -1)]
    [InlineData(1250, 1)]
    public void An_off_centre_circle_is_drawn_in_low_down_and_carried_out_near_the_top(double height, int direction)
    {
        var thermal = Scene.Make(2.5, 120, 1500, height);
        var moved = CentreMoves(thermal, turns: 10, offset: 60);
        Assert.Equal(direction, Math.Sign(moved));
        Assert.InRange(Math.Abs(moved), 2, 40);
    }

    /// <summary>The model's own lean: without shear nothing is carried along, with it the circle goes down the shear by
    /// u·sink/w a second (within a third: the circle averages over updrafts from the core to its rim).</summary>
    [Fact]
    public void A_leaning_thermal_leaves_the_glider_behind_on_the_downwind_side()
    {
        var thermal = Scene.Make(4, 250, 2500, 1750, null, 2);
        var flown = new Scene(thermal, 35);
        var sink = flown.Circle.SinkMs;
        var updraft = SwingTable.MeanClimbMs(thermal.At(thermal.Height), flown.Circle, 0) + sink;
        var relative = Lean.RelativeWindMs(thermal, thermal.Height);
        var slope = Lean.Slope(thermal, thermal.Height)!.Value;
        var expected = (relative - (slope * (updraft - sink))) * 2 * flown.Circle.PeriodS;
        Assert.Equal(expected, CentreMoves(thermal, turns: 2, offset: 0, shear: 1), tolerance: expected / 3);
        Assert.True(expected > 5);
    }

    /// <summary>A neighbour governs where it is the nearer one, with its own strength; nothing is summed ([Allen2006]).</summary>
    [Fact]
    public void The_nearest_updraft_governs()
    {
        var thermal = Scene.Medium;
        var state = Quiet(thermal);
        (state.NeighbourX, state.NeighbourStrength) = (Lane1.Of(400), Lane1.Of(0.5f));
        var there = Lane1.Of(400);
        Assert.Equal(0.5 * 2.75, new Column(thermal).Updraft(ref state, there, Lane1.Of(0), there * there).Value, tolerance: 0.0025);
    }

    private static EncounterState<Lane1> Quiet(Thermal thermal)
    {
        var state = new EncounterState<Lane1> { NeighbourX = Lane1.Of(1e6f), AgeShare = Lane1.Of(0.5f) };
        new Column(thermal).Renew(ref state, 0);
        state.Strength = state.Life;
        return state;
    }

    /// <summary>How far the centre of a held circle moves outward (or along the shear), m, with the height kept.</summary>
    private static double CentreMoves(Thermal thermal, int turns, double offset, float shear = 0)
    {
        var flown = new Scene(thermal, 35, Variometer.Usual);
        var flying = flown.Briefing.Flown(flown.Circle);
        var column = new Column(thermal);
        var state = Quiet(thermal);
        state.ShearX = Lane1.Of(shear);
        state.HeadingY = Lane1.Of(1);
        (state.Speed, state.SpeedAim) = (Lane1.Of(flying.Speed), Lane1.Of(flying.Speed));
        (state.Bank, state.BankWanted) = (Lane1.Of(flying.Bank), Lane1.Of(flying.Bank));
        state.X = Lane1.Of((float)(offset + flown.Circle.RadiusM));
        var tempo = new Tempo(flying, 10);
        while (state.Turned.Value < turns * 2 * Math.PI)
        {
            state.Gained = Lane1.Of(0);
            column.Renew(ref state, 0);
            Glide.Step(ref state, in column, flying, in tempo, 0);
        }

        return state.X.Value - flown.Circle.RadiusM - offset;
    }
}
