using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>Wind at the ground from a local time on.</summary>
/// <param name="Time">Local time.</param>
/// <param name="Wind">Mean wind.</param>
/// <param name="Gust">Gusts; null when none are expected.</param>
public readonly record struct WindFrom(TimeOnly Time, Wind Wind, Speed? Gust = null)
{
    /// <summary>Gusts; null when none are expected.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Weaker than the mean wind.</exception>
    public Speed? Gust { get; } = Gust is { } gust
        ? Speed.FromMetresPerSecond(Guard.Finite(gust.MetresPerSecond, min: Wind.Speed.MetresPerSecond, name: nameof(Gust)))
        : null;
}
