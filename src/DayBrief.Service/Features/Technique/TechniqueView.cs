using DayBrief.Days;
using DayBrief.Flight.Centring;
using DayBrief.Flight.Gliders;
using DayBrief.Flight.Thermals;
using DayBrief.Service.Infrastructure;
using Hangfire;

namespace DayBrief.Service.Features.Technique;

/// <summary>What the technique section shows one pilot: the facts, or how far their computation has come.</summary>
internal sealed record TechniqueView(Pilot Pilot, TechniqueFacts? Facts, double Done, string? PolarError, string? InstructorNote)
{
    /// <summary>The view for a pilot; asks for the study when it is not there yet. Null on a day without thermals.</summary>
    public static TechniqueView? For(Brief brief, Pilot pilot, bool metric, string? note, TechniqueDesk desk, IBackgroundJobClient jobs)
    {
        if (DayThermal.Of(brief.Day) is not { } described)
            return null;
        var key = TechniqueKey.Of(described, pilot.Variometer);
        var thermal = key.ToThermal();
        var (glider, wrong) = GliderOf(pilot);
        if (pilot.Polar is not null && wrong is null)
            return new(pilot, new(brief, thermal, Own(thermal, glider, pilot), glider, pilot, new Measures(metric)), 1, null, note);
        var state = desk.Find(key);
        if (state is not { Results: { } results })
        {
            ComputeTechnique.Ask(desk, jobs, key);
            return new(pilot, null, state?.Done ?? 0, wrong, note);
        }

        var study = results[TechniqueDesk.Classes.ToList().IndexOf(pilot.Glider)];
        return new(pilot, new(brief, thermal, study, GenericGlider.Of(pilot.Glider), pilot, new Measures(metric)), 1, wrong, note);
    }

    private static (Glider Glider, string? Wrong) GliderOf(Pilot pilot)
    {
        try
        {
            return (pilot.OwnGlider(), null);
        }
        catch (InvalidInputException refused)
        {
            return (GenericGlider.Of(pilot.Glider), refused.Message);
        }
    }

    /// <summary>One glider of the pilot's own is computed while he waits: a fifth of a second.</summary>
    private static CentringResult Own(Thermal thermal, Glider glider, Pilot pilot) =>
        CentringStudy.Run(thermal, glider, pilot.Variometer, new CentringOptions());
}
