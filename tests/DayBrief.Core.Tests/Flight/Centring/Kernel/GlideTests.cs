using DayBrief.Flight.Gliders;
using DayBrief.Flight.Instruments;
using DayBrief.Numerics.Lanes;
using DayBrief.Units;

namespace DayBrief.Flight.Centring.Kernel;

/// <summary>The kernel's flying against kinematics and energy, in air in which nothing moves.</summary>
public sealed class GlideTests
{
    private const double Gravity = 9.80665;

    /// <summary>A 20 s circle at 40°: V = g·tan φ·T/2π, so that it ends with a step.</summary>
    private static readonly Circle Circle =
        Circle.At(Scene.Standard, 40, Speed.FromMetresPerSecond(Gravity * Math.Tan(40 * Math.PI / 180) * 20 / (2 * Math.PI)));

    /// <summary>After one turn the glider is where it was; single precision over 100 steps allows millimetres, the stated 5 cm is a
    /// ten-thousandth of the way.</summary>
    [Fact]
    public void A_still_air_circle_closes_on_itself()
    {
        var (state, flying) = Turning();
        Fly(ref state, flying, 100, 5);
        Assert.Equal(0, Math.Sqrt(Square(state.X.Value) + Square(state.Y.Value)), tolerance: 0.05);
        Assert.Equal(2 * Math.PI, state.Turned.Value, tolerance: 1e-4);
        Assert.Equal(1, state.HeadingY.Value, tolerance: 1e-4);
    }

    /// <summary>Half a turn lies two radii V²/(g·tan φ) across; the chords of 0.2 s steps make it 0.02 % too wide.</summary>
    [Fact]
    public void The_circle_has_the_radius_of_its_speed_and_bank()
    {
        var (state, flying) = Turning();
        Fly(ref state, flying, 50, 5);
        Assert.Equal(2 * Circle.RadiusM, Math.Abs(state.X.Value), tolerance: 0.0005 * 2 * Circle.RadiusM);
    }

    /// <summary>Energy: in still air a steady turn loses exactly the turn's sink, n^{3/2}·w(V/√n), for its time (single precision).</summary>
    [Fact]
    public void A_still_air_circle_loses_the_circling_sink()
    {
        var (state, flying) = Turning();
        Fly(ref state, flying, 100, 5);
        Assert.Equal(-20 * Circle.SinkMs, state.Gained.Value, tolerance: 0.001 * 20 * Circle.SinkMs);
    }

    /// <summary>By definition of the time to roll from 45° to 45°: half of it from level to 45°.</summary>
    [Fact]
    public void Rolling_from_level_to_45_degrees_takes_half_the_time_from_45_to_45()
    {
        var (state, flying) = Turning();
        state.Bank = Lane1.Of(0);
        state.BankWanted = Lane1.Of(1);
        Fly(ref state, flying, (int)Math.Round(50 * 0.5 * Scene.Standard.RollS), 50);
        Assert.Equal(Math.PI / 4, state.Bank.Value, tolerance: 1e-4);
    }

    /// <summary>Analytic first-order lag for three turn periods: phase atan ωτ to 1° and amplitude 1/√(1+(ωτ)²) to 1 %; the
    /// steps of 0.1 s are a hundredth of a turn and more.</summary>
    [Theory]
    [InlineData(16, 2)]
    [InlineData(20, 1)]
    [InlineData(20, 3)]
    [InlineData(30, 2)]
    public void The_reading_lags_as_a_first_order_instrument_does(double periodS, double lagS)
    {
        var (state, flying) = Turning();
        flying = flying with { Lag = (float)lagS };
        (state.Bank, state.BankWanted) = (Lane1.Of(0), Lane1.Of(0));
        var tempo = new Tempo(flying, 10);
        var (sine, cosine) = (0.0, 0.0);
        for (var step = 0; step < 50 * periodS; step++)
        {
            state.Gust = Lane1.Of((float)Math.Sin(2 * Math.PI * (step + 0.5) / 10 / periodS));
            Glide.Step(ref state, Column.StillAir, flying, in tempo, 0);
            if (step < 40 * periodS)
                continue;
            var phase = 2 * Math.PI * (step + 1) / 10 / periodS;
            sine += state.Reading.Value * Math.Sin(phase) / (5 * periodS);
            cosine += state.Reading.Value * Math.Cos(phase) / (5 * periodS);
        }

        var instrument = new Variometer(lagS);
        Assert.Equal(instrument.LagDeg(periodS), Math.Atan2(-cosine, sine) * 180 / Math.PI, tolerance: 1);
        Assert.Equal(instrument.Gain(periodS), Math.Sqrt(Square(sine) + Square(cosine)), tolerance: 0.01 * instrument.Gain(periodS));
    }

    /// <summary>(V/g)·dV/dt: slowing from 30 m/s at 2 m/s² shows 6.1 m/s too much on an instrument without compensation or lag.</summary>
    [Fact]
    public void An_uncompensated_reading_takes_a_loss_of_speed_for_climb()
    {
        var (state, flying) = Turning();
        (state.Bank, state.BankWanted, state.Speed, state.SpeedAim) = (Lane1.Of(0), Lane1.Of(0), Lane1.Of(30), Lane1.Of(15));
        var true_ = state;
        var bare = flying with { Lag = 0, Uncompensated = 1, Speed = 15 };
        Fly(ref state, bare, 1, 100);
        Fly(ref true_, bare with { Uncompensated = 0 }, 1, 100);
        Assert.Equal(30 * 2 / Gravity, state.Reading.Value - true_.Reading.Value, tolerance: 0.01);
    }

    private static (EncounterState<Lane1> State, Flying Flying) Turning()
    {
        var flying = new Briefing(Scene.Medium, Circle, Variometer.Usual, SwingTable.For(Scene.Medium, Circle, Variometer.Usual)).Flown(Circle);
        var state = new EncounterState<Lane1>
        {
            HeadingY = Lane1.Of(1),
            Speed = Lane1.Of((float)Circle.SpeedMs),
            SpeedAim = Lane1.Of((float)Circle.SpeedMs),
            Bank = Lane1.Of(flying.Bank),
            BankWanted = Lane1.Of(flying.Bank),
        };
        Column.StillAir.Renew(ref state, 0);
        return (state, flying);
    }

    private static void Fly(ref EncounterState<Lane1> state, Flying flying, int steps, int stepsPerSecond)
    {
        var tempo = new Tempo(flying, stepsPerSecond);
        for (var step = 0; step < steps; step++)
            Glide.Step(ref state, Column.StillAir, flying, in tempo, 0);
    }

    private static double Square(double value) => value * value;
}
