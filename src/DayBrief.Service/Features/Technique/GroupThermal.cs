using DayBrief.Days;
using DayBrief.Flight.Thermals;
using DayBrief.Units;

namespace DayBrief.Service.Features.Technique;

/// <summary>The day's thermal where one experience group may circle in it.</summary>
/// <param name="At">The strongest step of the day.</param>
/// <param name="Rule">How low and how steep the group circles.</param>
/// <param name="Thermal">The thermal at a height at which the group circles; null where the lift ends below it.</param>
internal sealed record GroupThermal(DayStep At, CirclingRule Rule, Thermal? Thermal)
{
    /// <summary>Null on a day without usable thermals.</summary>
    public static GroupThermal? Of(Brief brief, Experience experience)
    {
        if (brief.Day.MaxUsableTop is null || DayThermal.StrongestStep(brief.Day) is not { UsableTopAglM: { } top } step)
            return null;
        var rule = brief.Site.Limits.Circling.For(experience);
        return new(step, rule, Within(DayThermal.Of(brief.Day, step), rule.LeastHeight.Metres, top));
    }

    /// <summary>Where it is described anyway, or higher where the group may not circle there.</summary>
    private static Thermal? Within(Thermal thermal, double leastM, double topM)
    {
        if (topM <= leastM)
            return null;
        var metres = Math.Clamp(thermal.Height.Metres, leastM, topM);
        if (metres == thermal.Height.Metres)
            return thermal;
        return metres > thermal.Depth.Metres ? null : thermal.DescribedAt(Height.FromMetres(metres));
    }
}
