using System.Collections.Immutable;

namespace DayBrief.Days;

/// <summary>What is known of one kind of caution.</summary>
/// <param name="Words">Key of its words, and its code for programs.</param>
/// <param name="Risk">What it can do and how likely, where its cause does not tell it better.</param>
/// <param name="Cause">What gives cause for it.</param>
/// <param name="Source">Where its threshold comes from.</param>
public sealed record CautionEntry(string Words, Risk Risk, string Cause, string Source)
{
    /// <summary>Nobody flies in it: be down before it.</summary>
    public bool EndsFlying { get; init; }
}

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

    /// <summary>Whether nobody flies in it, so that one is down before it.</summary>
    public static bool EndsFlying(Hazard hazard) => hazard.EndsFlying ?? All[hazard.Kind].EndsFlying;

    /// <summary>It ends flying, or an accident is likely: it is never left off a first screen or a sheet.</summary>
    public static bool IsSerious(Hazard hazard) => EndsFlying(hazard) || RiskOf(hazard).IsSerious;

    private static IEnumerable<(HazardKind Kind, CautionEntry Entry)> Storms() =>
    [
        (HazardKind.Thunder, new("thunder", new(Harm.Death, Chance.Likely), "METAR or a TAF group in daylight names thunder; or the computed cloud grows taller than 3000 m, tops below −20 °C, with CAPE over 300 J/kg or K over 30", "K: [FAA-13A] ch. 9; rest practice") { EndsFlying = true }),
        (HazardKind.Cumulonimbus, Named("cumulonimbus", "CB without thunder")),
        (HazardKind.Squall, Named("squall", "SQ")),
        (HazardKind.FunnelCloud, Named("funnel-cloud", "FC")),
        (HazardKind.Hail, Named("hail", "GR or GS")),
        (HazardKind.FreezingPrecipitation, Named("freezing-precipitation", "rain or drizzle with FZ")),
        (HazardKind.ThunderInStore, new("thunder-in-store", new(Harm.Death, Chance.Seldom), "CAPE 500 J/kg or more, in the morning or at the warmest hour; or 100 J/kg with a K index of 20 or more; and neither the computed day nor a report or forecast tells thunder. Possible from 1000 J/kg, likely from 2500", "K: [FAA-13A] ch. 9; CAPE practice")),
        (HazardKind.Showers, new("showers", new(Harm.Accident, Chance.Possible), "METAR or a TAF group names a shower that falls, without thunder; or computed cloud deeper than 3000 m with tops of −10 °C or colder, where no thunder is computed", Practice)),
        (HazardKind.Overdevelopment, new("overdevelopment", new(Harm.Accident, Chance.Possible), "METAR or a TAF group names TCU; or computed cloud deeper than 2500 m, where neither thunder nor showers are computed", Practice)),
        (HazardKind.SpreadOut, new("spread-out", new(Harm.Damage, Chance.Possible), "cloud tops stop under a stable layer with air within 5 K of saturation beneath it", Practice)),
        (HazardKind.Downdraught, new("downdraught", new(Harm.Accident, Chance.Possible), "tall or spreading cumulus as above; not where thunder, CB or showers are told", "[FAA-13A] ch. 9")),
    ];

    private static IEnumerable<(HazardKind Kind, CautionEntry Entry)> Winds() =>
    [
        (HazardKind.WindOverLimit, new("wind-over-limit", new(Harm.Accident, Chance.Stated), "mean wind above the site's wind limit (by more than 0.05 kt); above 20 kt where it sets none", "the site; 20 kt practice") { EndsFlying = true }),
        (HazardKind.GustOverLimit, new("gust-over-limit", new(Harm.Accident, Chance.Stated), "gusts above the site's gust limit; above 25 kt where it sets none", "the site; 25 kt practice") { EndsFlying = true }),
        (HazardKind.Gusts, new("gusts", new(Harm.Accident, Chance.Possible), "gusts 10 kt or more above the mean", "[WMO306] FM 15 reports them from there")),
        (HazardKind.SurfaceWind, new("surface-wind", new(Harm.Damage, Chance.Likely), "wind or gusts of 15 kt or more; not where a limit of wind or gusts is passed", Practice)),
        (HazardKind.Crosswind, new("crosswind", new(Harm.Damage, Chance.Likely), "per runway: wind (gusts where there are some) across it above the site's lowest limit by experience; 8 kt or more where the site states none. It ends flying where a limit is passed on every runway; where the site states none, with a mean of more than 15 kt or gusts of more than 25 kt across every runway. Not known where the direction varies", "limit: the site; 8 kt: [FAA-25] ch. 11; 15 and 25 kt practice")),
        (HazardKind.WindAloft, new("wind-aloft", new(Harm.Accident, Chance.Likely), "mean of 25 kt, or shear of 4 kt per 1000 ft, in the layer", Practice)),
        (HazardKind.WindGradient, new("wind-gradient", new(Harm.Accident, Chance.Possible), "the ascent's wind changes by 10 kt or more from the ground to 100 m, and it reports a level between 30 and 200 m; until thermals stir the layer", Practice)),
    ];

    private static IEnumerable<(HazardKind Kind, CautionEntry Entry)> Sight() =>
    [
        (HazardKind.VisibilityBelowLeast, new("visibility-below-least", new(Harm.Accident, Chance.Likely), "METAR or a TAF group below the site's least visibility; below 5 km where it sets none", "the site; 5 km: [SERA5005]") { EndsFlying = true }),
        (HazardKind.CeilingBelowLeast, new("ceiling-below-least", new(Harm.Accident, Chance.Likely), "broken or overcast cloud or vertical visibility in METAR or a TAF group below the site's least; below 450 m (1,500 ft) where it sets none", "the site; 450 m: [SERA5005]") { EndsFlying = true }),
        (HazardKind.LowCloud, new("low-cloud", new(Harm.Accident, Chance.Possible), "first cumulus, or broken or overcast cloud or vertical visibility in METAR or a TAF group, below 2,000 ft, but not below the least", Practice)),
        (HazardKind.PoorVisibility, new("poor-visibility", new(Harm.Accident, Chance.Possible), "METAR or a TAF group below 5 km, where the site's least is lower", "[SERA5001]")),
    ];

    private static IEnumerable<(HazardKind Kind, CautionEntry Entry)> Thermals() =>
    [
        (HazardKind.LowTops, new("low-tops", new(Harm.Damage, Chance.Possible), "usable top below 2,000 ft", "[FAA-13A] ch. 10 (field chosen by 1,500 ft)")),
        (HazardKind.LowThermalling, new("low-thermalling", new(Harm.Death, Chance.Possible), "usable top below 3,000 ft; or no climb of 1 m/s (2 kt); or thermals that end below 2,000 ft for 30 minutes or more before they grow", Practice)),
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

    private static CautionEntry Named(string words, string what) =>
        new(words, new(Harm.Death, Chance.Likely), $"METAR or a TAF group in daylight names {what}", "[WMO306] FM 15, FM 51") { EndsFlying = true };
}
