namespace DayBrief.Days;

/// <summary>One way the day may go: how far each uncertain input lies from what is assumed.</summary>
/// <param name="MaxTemperatureK">Added to the maximum temperature, K.</param>
/// <param name="DewPointK">Added to the dew points, K.</param>
/// <param name="CloudOktas">Added to the cloud cover.</param>
/// <param name="Moisture">Added to the ground's moisture α.</param>
/// <param name="AloftK">Added to the temperature above the lowest 500 m, growing to it from the ground, K.</param>
/// <param name="EntrainmentFactor">Times the entrainment ratio.</param>
/// <param name="DivergencePerSecond">Added to the divergence.</param>
/// <param name="SunFactor">Times the sunlight.</param>
/// <param name="InflowShare">Share of the difference between the temperature asked for and the one that sun and ground give that
/// comes with other air; the rest is other heating.</param>
internal readonly record struct DayMember(
    double MaxTemperatureK,
    double DewPointK,
    double CloudOktas,
    double Moisture,
    double AloftK,
    double EntrainmentFactor,
    double DivergencePerSecond,
    double SunFactor,
    double InflowShare)
{
    /// <summary>Variance of the air's own change over a day, 1.2 K (between morning and afternoon ascents of published pairs),
    /// over that and of the energy balance's maximum, 2 K (common practice): what of their difference most likely is other air.</summary>
    public const double UsualInflowShare = 0.3;

    /// <summary>Exactly what is assumed.</summary>
    public static DayMember Central => new(0, 0, 0, 0, 0, 1, 0, 1, UsualInflowShare);
}
