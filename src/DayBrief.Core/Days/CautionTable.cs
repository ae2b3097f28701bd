using System.Collections.Immutable;

namespace DayBrief.Days;

/// <summary>What is known of one kind of caution.</summary>
/// <param name="Words">Key of its words, and its code for programs.</param>
/// <param name="Risk">What it can do and how likely, where its cause does not tell it better.</param>
/// <param name="Cause">What gives cause for it.</param>
/// <param name="Source">Where its threshold comes from.</param>
public sealed record CautionEntry(string Words, Risk Risk, string Cause, string Source);

/// <summary>Every kind of caution: its cause, its rank, the key of its words and its source. docs/cautions.md shows it to readers.</summary>
/// <remarks>Grades of harm and chance are common practice, no source. A reported or stated cause weighs more than a computed
/// one: the hazard then carries its own <see cref="Hazard.Risk"/>.</remarks>
public static class CautionTable
{
    private const string Practice = "practice";

    /// <summary>By kind; every kind is in it.</summary>
    public static ImmutableSortedDictionary<HazardKind, CautionEntry> All { get; } =
        Storms().Concat(Winds()).Concat(Sight()).Concat(Thermals()).Concat(Heights()).Concat(Ground())
            .ToImmutableSortedDictionary(entry => entry.Kind, entry => entry.Entry);

    /// <summary>Harm and chance of a hazard.</summary>
    public static Risk RiskOf(Hazard hazard) => hazard.Risk ?? All[hazard.Kind].Risk;

    private static IEnumerable<(HazardKind Kind, CautionEntry Entry)> Storms() =>
    [
        (HazardKind.Thunder, new("thunder", new(Harm.Death, Chance.Likely), "METAR names thunder; or the computed cloud grows taller than 3000 m, tops below −20 °C, with CAPE over 300 J/kg or K over 30", "K: [FAA-13A] ch. 9; rest practice")),
        (HazardKind.Forecast, new("forecast", new(Harm.Death, Chance.Likely), "a TAF group in daylight names thunder, CB, or wind or gusts of 20 kt or more", Practice)),
        (HazardKind.ThunderInStore, new("thunder-in-store", new(Harm.Death, Chance.Seldom), "K index 20 or more, or CAPE 500 J/kg or more, and the computed day does not release it", "K: [FAA-13A] ch. 9; CAPE practice")),
        (HazardKind.Showers, new("showers", new(Harm.Accident, Chance.Possible), "METAR or TAF names a shower that falls; or computed cloud deeper than 3000 m with tops of −10 °C or colder. Not where thunder is told", Practice)),
        (HazardKind.Overdevelopment, new("overdevelopment", new(Harm.Accident, Chance.Possible), "METAR names TCU or CB; or computed cloud deeper than 2500 m. Not where thunder or showers are told", Practice)),
        (HazardKind.SpreadOut, new("spread-out", new(Harm.Damage, Chance.Possible), "cloud tops stop under a stable layer with air within 5 K of saturation beneath it", Practice)),
        (HazardKind.Downdraught, new("downdraught", new(Harm.Accident, Chance.Possible), "tall or spreading cumulus as above", "[FAA-13A] ch. 9")),
    ];

    private static IEnumerable<(HazardKind Kind, CautionEntry Entry)> Winds() =>
    [
        (HazardKind.WindOverLimit, new("wind-over-limit", new(Harm.Accident, Chance.Stated), "mean wind above the site's wind limit (by more than 0.05 kt)", "the site")),
        (HazardKind.GustOverLimit, new("gust-over-limit", new(Harm.Accident, Chance.Stated), "gusts above the site's gust limit", "the site")),
        (HazardKind.Gusts, new("gusts", new(Harm.Accident, Chance.Possible), "gusts 10 kt or more above the mean", "[WMO306] FM 15 reports them from there")),
        (HazardKind.SurfaceWind, new("surface-wind", new(Harm.Damage, Chance.Likely), "wind or gusts of 15 kt or more; not where a limit of wind or gusts is passed", Practice)),
        (HazardKind.Crosswind, new("crosswind", new(Harm.Damage, Chance.Likely), "per runway: wind (gusts where there are some) across it above the site's lowest limit by experience; 8 kt or more where the site states none. Not known where the direction varies", "limit: the site; 8 kt: [FAA-25] ch. 11")),
        (HazardKind.WindAloft, new("wind-aloft", new(Harm.Accident, Chance.Likely), "mean of 25 kt, or shear of 4 kt per 1000 ft, in the layer", Practice)),
        (HazardKind.WindGradient, new("wind-gradient", new(Harm.Accident, Chance.Possible), "a maximum of wind below 1000 m, 2 m/s or more above the wind over it", Practice)),
    ];

    private static IEnumerable<(HazardKind Kind, CautionEntry Entry)> Sight() =>
    [
        (HazardKind.LowCloud, new("low-cloud", new(Harm.Accident, Chance.Possible), "first cumulus, or broken cloud or vertical visibility in METAR or TAF, below 2,000 ft", Practice)),
        (HazardKind.PoorVisibility, new("poor-visibility", new(Harm.Accident, Chance.Possible), "METAR or TAF below 5 km", "[SERA5001]")),
    ];

    private static IEnumerable<(HazardKind Kind, CautionEntry Entry)> Thermals() =>
    [
        (HazardKind.LowTops, new("low-tops", new(Harm.Damage, Chance.Possible), "usable top below 2,000 ft", "[FAA-13A] ch. 10 (field chosen by 1,500 ft)")),
        (HazardKind.LowThermalling, new("low-thermalling", new(Harm.Death, Chance.Possible), "thermals end below 2,000 ft for 90 minutes or more before they grow", Practice)),
        (HazardKind.CirclingTogether, new("circling-together", new(Harm.Death, Chance.Possible), "usable top below 3,000 ft; or radius below 90 m at the best time (a circle of 45 kt and 30° has 95 m); or 4 km or more between thermals", "practice; what is advised [FAA-13A] ch. 10")),
        (HazardKind.Terrain, new("terrain", new(Harm.Accident, Chance.Possible), "the site says that hills or mountains are around it, and there are usable thermals", "practice; [AIM] 7-6 on mountain flying")),
        (HazardKind.SuddenEnd, new("sudden-end", new(Harm.Damage, Chance.Possible), "thermals are of the short-lived kind", "docs/physics.md")),
    ];

    private static IEnumerable<(HazardKind Kind, CautionEntry Entry)> Heights() =>
    [
        (HazardKind.Ceiling, new("ceiling", new(Harm.Accident, Chance.Possible), "usable top above the ceiling that the site states", "the site")),
        (HazardKind.CloudClearance, new("cloud-clearance", new(Harm.Accident, Chance.Possible), "usable top within 300 m (1,000 ft) of the cumulus base", "[SERA5001]; lift growing near the base: [FAA-13A] ch. 9")),
        (HazardKind.Icing, new("icing", new(Harm.Damage, Chance.Possible), "0 °C below the usable top", "[FAA-13A] ch. 9")),
        (HazardKind.Oxygen, new("oxygen", new(Harm.Accident, Chance.Possible), "usable top 10,000 ft or more above sea level", "[AIM] 8-1-2: advised by day from 10,000 ft. Rules differ: [CFR91] 91.211 asks the crew for it above 12,500 ft after 30 minutes and above 14,000 ft always, [LuftBODV3] § 11 above 12,000 ft after 30 minutes and above 13,000 ft for all")),
    ];

    private static IEnumerable<(HazardKind Kind, CautionEntry Entry)> Ground() =>
    [
        (HazardKind.DensityAltitude, new("density-altitude", new(Harm.Damage, Chance.Likely), "density altitude 1,500 ft or more above the field, at the highest temperature, by QNH where known", "formula [ICAO7488]; threshold practice")),
        (HazardKind.Heat, new("heat", new(Harm.Damage, Chance.Possible), "30 °C or more", Practice)),
        (HazardKind.Cold, new("cold", new(Harm.Discomfort, Chance.Likely), "no more than 5 °C", Practice)),
        (HazardKind.Ultraviolet, new("ultraviolet", new(Harm.Discomfort, Chance.Possible), "clear-sky UV index of 3 or more for 300 DU of ozone", "formula [Madronich2007], threshold [WHO2002]")),
        (HazardKind.LastLight, new("last-light", new(Harm.Damage, Chance.Possible), "thermals last until less than 60 minutes before sunset", Practice)),
    ];
}
