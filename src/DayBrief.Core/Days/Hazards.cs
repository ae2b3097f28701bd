namespace DayBrief.Days;

/// <summary>Which hazards a day gives cause for, the worst first. None without a cause.</summary>
/// <remarks>Thresholds that have a public source name it; the others are common practice, no source: docs/cautions.md has all
/// of them. Limits of the site and of the pilot come before all of them.</remarks>
public static class Hazards
{
    /// <summary>The hazards of a day, the worst first.</summary>
    public static IReadOnlyList<Hazard> Of(Brief brief) => [.. Ranked(brief).All.SelectMany(caution => caution.Hazards)];

    /// <summary>The same by kind, in order of harm times chance.</summary>
    public static RankedCautions Ranked(Brief brief)
    {
        var winds = GroundWind.Of(brief);
        IEnumerable<Hazard?> all =
        [
            .. StormHazards.Of(brief),
            .. CloudHazards.Of(brief),
            .. WindHazards.Of(brief, winds),
            .. CrosswindByHour.Of(brief, winds),
            WindGradient.Of(brief),
            .. ThermalHazards.Of(brief),
            .. HeightHazards.Of(brief),
            .. GroundHazards.Of(brief),
        ];
        return RankedCautions.Of(FromTheStart(brief, [.. all.OfType<Hazard>()]));
    }

    /// <summary>Marks what is there before anybody flies: from sunrise, from the beginning of the forecast, or going on from such.</summary>
    private static IEnumerable<Hazard> FromTheStart(Brief brief, Hazard[] hazards)
    {
        var noon = brief.Day.Sun.Noon;
        var (sunrise, forecast) = (Daylight.Of(brief).From, brief.Forecast?.From?.NearestTo(noon));
        bool Begins(Hazard hazard) => hazard.From is null || hazard.From <= sunrise
            || (hazard.Source == WindSource.Forecast && hazard.From <= forecast && hazard.From < noon)
            || (hazard.Source == WindSource.Reported && hazard.From < noon);
        return hazards.Select(hazard => hazard with
        {
            FromTheStart = Begins(hazard)
                || hazards.Any(before => before.Kind == hazard.Kind && before.About == hazard.About && Begins(before) && before.From <= hazard.From && before.To >= hazard.From),
        });
    }
}
