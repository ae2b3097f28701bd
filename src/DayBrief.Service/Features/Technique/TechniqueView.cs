using DayBrief.Days;
using DayBrief.Flight.Centring;
using DayBrief.Flight.Gliders;
using DayBrief.Flight.Thermals;
using DayBrief.Service.Charts;
using DayBrief.Service.Infrastructure;
using DayBrief.Texts;
using Hangfire;

namespace DayBrief.Service.Features.Technique;

/// <summary>What the technique section shows one pilot: the facts, or how far their computation has come.</summary>
internal sealed record TechniqueView(Pilot Pilot, TechniqueFacts? Facts, double Done, Words? PolarError, Measures Say)
{
    /// <summary>The view for a pilot; asks for the study when it is not there yet. Null on a day without usable thermals.</summary>
    public static TechniqueView? For(Brief brief, Pilot pilot, Figures figures, TechniqueDesk desk, IBackgroundJobClient jobs)
    {
        if (brief.Day.MaxUsableTop is null || DayThermal.StrongestStep(brief.Day) is not { } step)
            return null;
        var say = new Measures(figures);
        var key = TechniqueKey.Of(DayThermal.Of(brief.Day, step), pilot.Variometer);
        var thermal = key.ToThermal();
        var (glider, wrong) = GliderOf(pilot);
        if (pilot.Polar is not null && wrong is null)
            return new(pilot, new(brief, step, thermal, Own(thermal, glider, pilot), glider, pilot, say), 1, null, say);
        var state = desk.Find(key);
        if (state is not { Results: { } results })
        {
            ComputeTechnique.Ask(desk, jobs, key);
            return new(pilot, null, state?.Done ?? 0, wrong, say);
        }

        var study = results[TechniqueDesk.Classes.ToList().IndexOf(pilot.Glider)];
        return new(pilot, new(brief, step, thermal, study, GenericGlider.Of(pilot.Glider), pilot, say), 1, wrong, say);
    }

    private static (Glider Glider, Words? Wrong) GliderOf(Pilot pilot)
    {
        try
        {
            return (pilot.OwnGlider(), null);
        }
        catch (InvalidInputException refused)
        {
            return (GenericGlider.Of(pilot.Glider), refused.Errors[0].Words);
        }
    }

    /// <summary>One glider of the pilot's own is computed while he waits: a fifth of a second.</summary>
    private static CentringResult Own(Thermal thermal, Glider glider, Pilot pilot) =>
        CentringStudy.Run(thermal, glider, pilot.Variometer, new CentringOptions());
}
