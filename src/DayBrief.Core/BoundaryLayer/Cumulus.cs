using DayBrief.Thermodynamics;
using DayBrief.Units;

namespace DayBrief.BoundaryLayer;

/// <summary>The share of the layer's top that thermals fill with cloud, and what they carry away.</summary>
/// <param name="Cover">Share of cloudy updrafts at the layer's top, 0 to 1.</param>
/// <param name="MassFluxMs">Air that they take through the top, m/s; at most what comes in by entrainment.</param>
/// <param name="ExcessQ">How much moister it is than the layer, kg/kg.</param>
internal readonly record struct Cumulus(double Cover, double MassFluxMs, double ExcessQ)
{
    /// <summary>Depths of the layer up to which thermals overshoot [Stull1988]: no cumulus is told above.</summary>
    public const double Reach = 1.2;

    /// <summary>Share of what comes in at the layer's top that cumulus takes at most; if it took all, it would hold the top down
    /// until the jump there vanished. Cloud that stays under the layer's lid may (both choices).</summary>
    public static double MostOfEntrained(double stratiform) => Free + ((1 - Free) * stratiform);

    private const double MostFree = 0.06;
    private const double Free = 0.8;
    private const double FullReach = 1.19;
    private const double LeastTransitionM = 50;
    private const double ProjectedPerShare = 4;
    private const double MostTransitionM = 300;

    /// <summary>Share of the sky that cumulus covers seen from the ground, for a share of cloudy updrafts at its base.</summary>
    /// <remarks>Four times: large-eddy runs of trade cumulus have 0.03 and 0.13 [Siebesma2003] (from memory).</remarks>
    public static double Projected(double share) => Math.Min(1, ProjectedPerShare * share);

    /// <summary>Share of the cumulus of the scheme that is told, 0 to 1, for a condensation level in depths of the layer: all up to
    /// 1.19, none from 1.2. The scheme's wide spread of moisture would have cloud still higher while the layer grows fast.</summary>
    public static double Reached(double depths) => Math.Clamp((Reach - depths) / (Reach - FullReach), 0, 1);

    /// <summary>The share that is told: of cumulus that rises freely at most 0.06, a quarter of the sky (the large-eddy run of
    /// the ARM case has 0.18 to 0.35), of cloud under the layer's lid all that is saturated; as far as thermals reach it.</summary>
    /// <param name="depths">LCL in depths of the layer.</param>
    /// <param name="stratiform">0 for cloud that rises freely, 1 for cloud under the layer's lid.</param>
    public Cumulus Told(double depths, double stratiform)
    {
        var free = Math.Min(Cover, MostFree);
        return this with { Cover = Reached(depths) * (free + (stratiform * (Cover - free))) };
    }

    /// <summary>Cumulus over a mixed layer.</summary>
    /// <remarks>[Neggers2006] as CLASS [Vila2015] has it: the water in the thermals' tops spreads with the variance that
    /// entrainment makes, σ² = −w′q′_e Δq h/(δ w*), and the share above saturation is 0.5 + 0.36 arctan(1.55 (q − q_s)/σ)
    /// [CuijpersBechtold1995]. So the first cloud comes from the moistest and highest thermals, while the mean top is
    /// still below the LCL. The mass flux is cover times w*, but
    /// not more than comes in by entrainment (<see cref="MixedLayer"/>): cloud that fills the layer's top (stratocumulus)
    /// does not drain it. The transition depth δ is the distance from the layer's top
    /// to the LCL, kept between 50 and 300 m.</remarks>
    public static Cumulus Over(
        double depthM, in LayerState state, double wStar, double entrainmentMs, double surfaceKelvins, double surfaceHpa, double lclM)
    {
        if (wStar <= 0 || state.Q <= 0)
            return default;
        var kelvins = surfaceKelvins - (Air.DryLapseRate * depthM);
        var hpa = surfaceHpa * Math.Exp(-Air.Gravity * depthM / (Air.GasConstant * (surfaceKelvins + kelvins) / 2));
        var saturated = Humidity.MixingRatioKgKg(kelvins - Temperature.ZeroCelsius, hpa);
        var jump = state.QAbove - state.Q;
        var transition = Math.Clamp(lclM - depthM, LeastTransitionM, MostTransitionM);
        var variance = entrainmentMs * jump * jump * depthM / (transition * wStar);
        var sigma = Math.Sqrt(Math.Max(variance, 1e-10));
        var cover = Math.Max(0, 0.5 + (0.36 * Math.Atan(1.55 * (state.Q - saturated) / sigma)));
        return new(cover, cover * wStar, sigma);
    }
}
