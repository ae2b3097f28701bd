namespace DayBrief.Thermodynamics;

/// <summary>Constants of air and water vapour used everywhere in the core.</summary>
/// <remarks>[MetPy] constants, so that results compare with that library; [WMO8] agrees to four figures.</remarks>
public static class Air
{
    /// <summary>Standard acceleration of gravity, m s⁻² [SI].</summary>
    public const double Gravity = 9.80665;

    /// <summary>Specific gas constant of dry air, J kg⁻¹ K⁻¹ [MetPy].</summary>
    public const double GasConstant = 287.047;

    /// <summary>R_d/c_p of dry air as an ideal diatomic gas [MetPy].</summary>
    public const double Kappa = 2.0 / 7;

    /// <summary>Specific heat of dry air at constant pressure, J kg⁻¹ K⁻¹: R_d/κ.</summary>
    public const double SpecificHeat = GasConstant / Kappa;

    /// <summary>Molar mass of water over that of dry air [MetPy].</summary>
    public const double Epsilon = 0.62196;

    /// <summary>Latent heat of vaporisation at 0 °C, J kg⁻¹ [MetPy].</summary>
    public const double LatentHeat = 2.50084e6;

    /// <summary>Dry-adiabatic lapse rate g/c_p, K m⁻¹ [AMS].</summary>
    public const double DryLapseRate = Gravity / SpecificHeat;
}
