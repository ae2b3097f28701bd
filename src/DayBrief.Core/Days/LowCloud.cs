namespace DayBrief.Days;

/// <summary>Fog and low stratus: cloud of air that is saturated at the ground before the sun has stirred it. No cumulus.</summary>
internal static class LowCloud
{
    /// <summary>How much of the sky it shades as cloud does that lets little through, 0 to 1: fog and thin stratus let about
    /// two thirds of the sunlight through (common practice, no source).</summary>
    public const double Shade = 0.75;

    // Base below which it counts as low: 150 m, about 500 ft; and below which it is fog: 30 m. Choices.
    private const double LowBaseM = 150;
    private const double FogM = 30;
    private const double StirredM = 300;

    /// <summary>Whether cloud with this base over a layer of this depth is fog or low stratus.</summary>
    public static bool Is(double baseM, double depthM) => baseM < depthM && (baseM < LowBaseM || depthM < StirredM);

    public static bool IsFog(double baseM) => baseM < FogM;
}
