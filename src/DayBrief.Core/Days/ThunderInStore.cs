using DayBrief.Soundings;
using DayBrief.Thermodynamics;
using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>Thunder for which the air holds the energy, though the computed day does not release it.</summary>
internal static class ThunderInStore
{
    /// <summary>Energy worth a warning even under a lid: 500 J/kg. Common practice, no source.</summary>
    public const double CapeJkg = 500;

    /// <summary>[FAA-13A] ch. 9, table of the K index: from 20 on showers and thunder become more and more likely.</summary>
    public const double KIndex = 20;

    /// <summary>Energy without which a K index says nothing: 100 J/kg. Common practice, no source.</summary>
    public const double CapeWithKJkg = 100;

    /// <summary>Energies from which thunder is more than seldom and likely. Common practice, no source.</summary>
    private const double MuchJkg = 1000, VeryMuchJkg = 2500;

    /// <summary>Forcing that a single column cannot know (fronts, hills, sea breezes) may still set it free. The energy is the
    /// morning's or that of the warmest hour, whichever is more: a cold morning floor hides what the day brings.</summary>
    public static Hazard? Of(Brief brief)
    {
        var cape = Math.Max(brief.Ascent.Energy?.CapeJkg ?? 0, OfTheDay(brief)?.CapeJkg ?? 0);
        var byK = brief.Ascent.KIndex >= KIndex && cape >= CapeWithKJkg;
        if (cape < CapeJkg && !byK)
            return null;
        var chance = cape >= VeryMuchJkg ? Chance.Likely : cape >= MuchJkg ? Chance.Possible : Chance.Seldom;
        return Daylight.WithThermals(brief, new(HazardKind.ThunderInStore, cape)
        {
            Beside = byK ? brief.Ascent.KIndex : null,
            Risk = new(Harm.Death, chance),
        });
    }

    private static ConvectiveEnergy? OfTheDay(Brief brief)
    {
        var warmest = brief.Day.Steps.Where(step => step.MixedLayerMixingRatioGkg > 0).MaxBy(step => step.MixedLayerThetaK);
        if (warmest is not { MixedLayerThetaK: { } theta, MixedLayerMixingRatioGkg: { } ratio })
            return null;
        var ground = brief.Ascent.Profile.SurfacePressure;
        var kelvins = DryAdiabat.MovedKelvins(theta, 1000, ground.Hectopascals);
        var dewPoint = Math.Min(Humidity.DewPointCelsius(ratio / 1000, ground.Hectopascals), kelvins - Temperature.ZeroCelsius);
        return ConvectiveEnergy.Of(brief.Ascent.Profile, Temperature.FromKelvins(kelvins), Temperature.FromCelsius(dewPoint));
    }
}
