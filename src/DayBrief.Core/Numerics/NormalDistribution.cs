using MathNet.Numerics.Distributions;

namespace DayBrief.Numerics;

/// <summary>The standard normal distribution.</summary>
internal static class NormalDistribution
{
    /// <summary>Share below a standard deviate.</summary>
    public static double Below(double z) => Normal.CDF(0, 1, z);
}
