using System.Runtime.CompilerServices;

namespace DayBrief.Units;

/// <summary>Refuses numbers that no quantity may hold.</summary>
internal static class Guard
{
    public static double Finite(
        double value,
        double min = double.NegativeInfinity,
        double max = double.PositiveInfinity,
        [CallerArgumentExpression(nameof(value))] string? name = null) =>
        double.IsFinite(value) && value >= min && value <= max
            ? value
            : throw new ArgumentOutOfRangeException(name, value, $"Must be a finite number from {min} to {max}.");
}
