using DayBrief.Soundings;
using DayBrief.Thermodynamics;
using DayBrief.Units;

namespace DayBrief.Scores;

/// <summary>Depth of the stirred layer that an ascent shows.</summary>
public static class ObservedDepth
{
    /// <summary>The layer's top is where it is this much warmer (virtual potential temperature) than the layer's mean.</summary>
    public const double ExcessK = 0.5;

    /// <summary>Below this the ground's own warm skin does not count in the mean, m.</summary>
    private const double SkinM = 100;

    private const double StepM = 10;
    private const double HighestM = 6000;

    /// <summary>The lowest height whose virtual potential temperature exceeds the mean from 100 m to there by 0.5 K, above the
    /// ascent's ground; null where the ascent shows no such height below 6 km.</summary>
    /// <remarks>The layer's own top: some 200 m below where a parcel of the superadiabatic surface and 0.5 K would end. Ours; compared with
    /// independently computed depths of 31 ascents in a test.</remarks>
    public static Height? Of(Sounding sounding)
    {
        var profile = Profile.Of(sounding);
        var highest = Math.Min(HighestM, profile.Top.Metres);
        double sum = 0;
        var count = 0;
        for (var z = SkinM; z <= highest; z += StepM)
        {
            var here = ThetaV(profile, z);
            if (count > 5 && here >= (sum / count) + ExcessK)
                return Height.FromMetres(z);
            sum += here;
            count++;
        }

        return null;
    }

    private static double ThetaV(Profile profile, double metres)
    {
        var hpa = profile.HpaAtHeight(metres);
        var kelvins = profile.KelvinsAt(hpa);
        var moist = profile.MoistHpa.Length > 1 && hpa <= profile.MoistHpa[0] && hpa >= profile.MoistHpa[^1];
        var mixing = moist ? Humidity.MixingRatioKgKg(profile.DewPointCelsiusAt(hpa), hpa) : 0;
        return DryAdiabat.MovedKelvins(Humidity.VirtualKelvins(kelvins, mixing), hpa, 1000);
    }
}
