using DayBrief.Units;

namespace DayBrief.Flight.Gliders;

/// <summary>What matters of a glider for circling: its polar, when it stalls and how fast it rolls.</summary>
public sealed class Glider
{
    /// <summary>Smallest speed over stall speed that any computed circle uses (common practice, no source).</summary>
    public const double LeastSpeedOverStall = 1.15;

    /// <summary>A glider from its polar.</summary>
    /// <param name="name">What the reader calls it.</param>
    /// <param name="polar">Straight-flight polar at the given wing loading.</param>
    /// <param name="stall">Stall speed in straight flight, 8 to 60 m/s, below the speed of least sink · 1.2.</param>
    /// <param name="wingLoadingKgM2">Wing loading, 10 to 80 kg/m².</param>
    /// <param name="rollS">Time to roll from 45° one way to 45° the other, 1 to 12 s.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public Glider(string name, Polar polar, Speed stall, double wingLoadingKgM2, double rollS)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ArgumentNullException.ThrowIfNull(polar);
        (Name, Polar, Stall) = (name, polar, stall);
        Guard.Finite(stall.MetresPerSecond, 8, Math.Min(60, 1.2 * polar.MinimumSinkSpeedMs), nameof(stall));
        WingLoadingKgM2 = Guard.Finite(wingLoadingKgM2, 10, 80);
        RollS = Guard.Finite(rollS, 1, 12);
    }

    /// <summary>What the reader calls it.</summary>
    public string Name { get; }

    /// <summary>Straight-flight polar.</summary>
    public Polar Polar { get; }

    /// <summary>Stall speed in straight flight.</summary>
    public Speed Stall { get; }

    /// <summary>Wing loading, kg/m².</summary>
    public double WingLoadingKgM2 { get; }

    /// <summary>Time to roll from 45° one way to 45° the other, s.</summary>
    public double RollS { get; }

    /// <summary>Rate of roll, degrees a second.</summary>
    public double RollRateDegS => 90 / RollS;

    /// <summary>The same glider at another wing loading; all speeds and sinks go with the root of the ratio [FAA-13A].</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 10 to 80 kg/m².</exception>
    public Glider AtWingLoading(double kgM2)
    {
        var ratio = Guard.Finite(kgM2, 10, 80) / WingLoadingKgM2;
        return new(Name, Polar.Heavier(ratio), Speed.FromMetresPerSecond(Stall.MetresPerSecond * Math.Sqrt(ratio)), kgM2, RollS);
    }

    /// <summary>The same glider rolling slower (or faster): the time from 45° to 45° times a factor.</summary>
    internal Glider Rolling(double factor) => new(Name, Polar, Stall, WingLoadingKgM2, Math.Clamp(RollS * factor, 1, 12));
}
