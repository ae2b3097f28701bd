using DayBrief.Units;

namespace DayBrief.BoundaryLayer;

/// <summary>How the ground shares out the net radiation.</summary>
/// <param name="NetWm2">Net radiation, W/m².</param>
/// <param name="SensibleWm2">Heat given to the air.</param>
/// <param name="LatentWm2">Heat used to evaporate water.</param>
public readonly record struct EnergyBalance(double NetWm2, double SensibleWm2, double LatentWm2)
{
    private const double BaseEvaporationWm2 = 20;

    /// <summary>The heat that goes into the ground.</summary>
    public double GroundWm2 => NetWm2 - SensibleWm2 - LatentWm2;

    /// <summary>Shares out a net radiation.</summary>
    /// <remarks>[HoltslagUlden1983] eqs. 14–15: H = [(1 − α) + γ/s]/(1 + γ/s) (Q* − G) − β, the modified Priestley–Taylor
    /// form with β = 20 W/m²; G a share of Q*. γ/s at the pressure of the site. By day.</remarks>
    /// <param name="netWm2">Net radiation Q*.</param>
    /// <param name="surface">The ground.</param>
    /// <param name="air">Screen temperature.</param>
    /// <param name="pressure">Pressure at the ground.</param>
    public static EnergyBalance Of(double netWm2, GroundSurface surface, Temperature air, Pressure pressure) =>
        Of(Guard.Finite(netWm2), surface, Radiation.PsychrometricOverSlope(air.Kelvins, pressure.Hectopascals));

    /// <summary>Shares out what the ground keeps by a given Bowen ratio H/LE.</summary>
    /// <remarks>Definition of the ratio [AMS] "Bowen ratio".</remarks>
    public static EnergyBalance WithBowenRatio(double netWm2, double groundWm2, double bowenRatio)
    {
        Guard.Finite(bowenRatio, min: 0);
        var available = Guard.Finite(netWm2) - Guard.Finite(groundWm2);
        return new(netWm2, available * bowenRatio / (1 + bowenRatio), available / (1 + bowenRatio));
    }

    internal static EnergyBalance Of(double netWm2, in GroundSurface surface, double psychrometricOverSlope)
    {
        var available = netWm2 * (1 - surface.GroundShare);
        var latent = (surface.Moisture / (1 + psychrometricOverSlope) * available) + BaseEvaporationWm2;
        return new(netWm2, available - latent, latent);
    }
}
