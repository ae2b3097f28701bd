using DayBrief.Units;

namespace DayBrief.Flight.Instruments;

/// <summary>How the pilot learns of the climb.</summary>
public enum Display
{
    /// <summary>Heard at once while looking out.</summary>
    Audio,

    /// <summary>Read in glances.</summary>
    Needle,
}

/// <summary>A variometer: a first-order lag, how much of the speed changes it compensates, and its display.</summary>
/// <remarks>First-order instrument: τ·dy/dt + y = x; for a reading that swings once a turn the amplitude is 1/√(1+(ωτ)²) and
/// the phase atan ωτ. Delay of the display: 0.3 s heard, 0.7 s read in glances (assumed, no source).</remarks>
public sealed record Variometer
{
    /// <summary>A variometer.</summary>
    /// <param name="lagS">Time constant τ, 0 to 10 s.</param>
    /// <param name="display">How it is presented.</param>
    /// <param name="compensation">Share of a speed change that the total-energy compensation takes out, 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public Variometer(double lagS, Display display = Display.Audio, double compensation = 1)
    {
        LagS = Guard.Finite(lagS, 0, 10);
        Display = display;
        Compensation = Guard.Finite(compensation, 0, 1);
    }

    /// <summary>A quick electronic one: 1 s, audio.</summary>
    public static Variometer Quick { get; } = new(1);

    /// <summary>An electronic one with its damping set to 2 s, audio.</summary>
    public static Variometer Usual { get; } = new(2);

    /// <summary>A slow mechanical one: 3 s, needle.</summary>
    public static Variometer Slow { get; } = new(3, Display.Needle);

    /// <summary>Time constant, s.</summary>
    public double LagS { get; }

    /// <summary>How it is presented.</summary>
    public Display Display { get; }

    /// <summary>Share of a speed change that is compensated, 0 to 1.</summary>
    public double Compensation { get; }

    /// <summary>Time from the display's showing to the pilot's knowing, s.</summary>
    public double DisplayDelayS => Display == Display.Audio ? 0.3 : 0.7;

    /// <summary>How far the reading trails the truth in a turn of this period, degrees of turn.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Period not above 0.</exception>
    public double LagDeg(double periodS) => Math.Atan(Omega(periodS) * LagS) * 180 / Math.PI;

    /// <summary>The same in seconds.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Period not above 0.</exception>
    public double LagSecondsIn(double periodS) => LagDeg(periodS) / 360 * periodS;

    /// <summary>Share of a once-a-turn swing that the reading shows.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Period not above 0.</exception>
    public double Gain(double periodS) => 1 / Math.Sqrt(1 + Math.Pow(Omega(periodS) * LagS, 2));

    /// <summary>What a change of speed adds to the reading, m/s: −(1−compensation)·(V/g)·dV/dt; slowing down reads as climb.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not finite.</exception>
    public double SpeedChangeErrorMs(Speed speed, double accelerationMs2) =>
        -(1 - Compensation) * speed.MetresPerSecond * Guard.Finite(accelerationMs2) / 9.80665;

    private static double Omega(double periodS) => 2 * Math.PI / Guard.Finite(periodS, double.Epsilon);
}
