namespace DayBrief.Soundings.Quality;

/// <summary>Pressure in the ICAO standard atmosphere below 11 km.</summary>
/// <remarks>[ICAO7488]: 15 °C and 1013.25 hPa at sea level, 6.5 °C/km; p = p₀ (1 − L z/T₀)^(g/(R L)).</remarks>
internal static class StandardAtmosphere
{
    private const double SeaLevelHpa = 1013.25;
    private const double SeaLevelKelvins = 288.15;
    private const double LapseKelvinsPerM = 0.0065;
    private const double GasConstant = 287.05287;
    private const double Exponent = Thermodynamics.Air.Gravity / (GasConstant * LapseKelvinsPerM);

    public static double PressureHpa(double heightM) => GroundPressureHpa(SeaLevelHpa, heightM);

    public static double HeightM(double pressureHpa) =>
        SeaLevelKelvins / LapseKelvinsPerM * (1 - Math.Pow(pressureHpa / SeaLevelHpa, 1 / Exponent));

    /// <summary>Pressure at an elevation from the altimeter setting: the standard atmosphere shifted until an altimeter
    /// set to QNH reads the elevation [ICAO7488].</summary>
    public static double GroundPressureHpa(double qnhHpa, double elevationM)
    {
        var reduced = Math.Pow(qnhHpa / SeaLevelHpa, 1 / Exponent) - (LapseKelvinsPerM * elevationM / SeaLevelKelvins);
        return SeaLevelHpa * Math.Pow(Math.Max(reduced, 0.1), Exponent);
    }
}
