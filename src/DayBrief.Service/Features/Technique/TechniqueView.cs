using DayBrief.Days;
using DayBrief.Flight.Centring;
using DayBrief.Flight.Gliders;
using DayBrief.Service.Charts;
using DayBrief.Service.Infrastructure;
using DayBrief.Texts;
using Hangfire;

namespace DayBrief.Service.Features.Technique;

/// <summary>What the technique section shows one pilot: the facts, or how far their computation has come.</summary>
/// <param name="Pilot">Who asks.</param>
/// <param name="Group">The day's thermal where the pilot's group may circle in it.</param>
/// <param name="Glider">What the pilot flies.</param>
/// <param name="Facts">What the words are made from; null while it is computed, and where the group may not circle at all.</param>
/// <param name="Done">Share of the computation that is done.</param>
/// <param name="PolarError">What is wrong with the pilot's own polar.</param>
/// <param name="Say">The reader's units and language.</param>
internal sealed record TechniqueView(
    Pilot Pilot, GroupThermal Group, Glider Glider, TechniqueFacts? Facts, double Done, Words? PolarError, Measures Say)
{
    /// <summary>The lift ends below the height under which the group does not circle.</summary>
    public bool TooLow => Group.Thermal is null;

    /// <summary>What to say in place of advice on a day, or in a glider, that gives none; null where there is advice.</summary>
    public string? None => this switch
    {
        { TooLow: true } => Say.Say($"The lift ends at {Say.Figures.Text(Group.At.UsableTopAglM ?? 0)}: nobody of your group circles so low, so there is no advice on circling today."),
        { Facts: { Study.CentredClimbMs: <= 0 } facts } => Say.Say($"In today's thermal ({Say.Vertical(facts.Thermal.CoreUpdraft.MetresPerSecond)} in the core, {Say.Length(facts.Thermal.RadiusM)} radius) no circle of this glider climbs within the limits of your group."),
        _ => null,
    };

    /// <summary>The view for a pilot; asks for the study when it is not there yet. Null on a day without usable thermals.</summary>
    public static TechniqueView? For(Brief brief, Pilot pilot, Figures figures, TechniqueDesk desk, IBackgroundJobClient jobs) =>
        For(brief, pilot, figures, key =>
        {
            if (desk.Find(key) is { Results: { } results })
                return (results, 1);
            ComputeTechnique.Ask(desk, jobs, key);
            return (null, desk.Find(key)?.Done ?? 0);
        });

    /// <summary>The same with the study computed now where it is not there yet.</summary>
    public static TechniqueView? Now(Brief brief, Pilot pilot, Figures figures, TechniqueDesk desk, CancellationToken stopping = default) =>
        For(brief, pilot, figures, key => (desk.Studies(key, stopping), 1));

    private static TechniqueView? For(
        Brief brief, Pilot pilot, Figures figures, Func<TechniqueKey, (IReadOnlyList<CentringResult>? Results, double Done)> studies)
    {
        if (GroupThermal.Of(brief, pilot.Experience) is not { } group)
            return null;
        var (glider, wrong) = GliderOf(pilot);
        var view = new TechniqueView(pilot, group, glider, null, 1, wrong, new Measures(figures));
        if (group.Thermal is not { } found)
            return view;
        var key = TechniqueKey.Of(found, pilot, group.Rule.Circles);
        if (pilot.Polar is not null && wrong is null)
            return view.With(brief, key, CentringStudy.Run(key.ToThermal(), glider, pilot.Variometer, key.ToOptions()), []);
        var (results, done) = studies(key);
        return results is null
            ? view with { Done = done }
            : view.With(brief, key, results[TechniqueDesk.Classes.ToList().IndexOf(pilot.Glider)], results);
    }

    private TechniqueView With(Brief brief, TechniqueKey key, CentringResult study, IReadOnlyList<CentringResult> classes) => this with
    {
        Facts = new(brief, Group.At, key.ToThermal(), study, Glider, Pilot, Say with { ClimbScale = ScaleOf(brief, study) }, Group.Rule) { Classes = classes },
    };

    /// <summary>No climb is told above the day's own, whatever the glider: what the page says once it says everywhere.</summary>
    private static double ScaleOf(Brief brief, CentringResult study) =>
        brief.Day.MaxClimb is { MetresPerSecond: > 0 and var most } && study.CentredClimbMs > most ? most / study.CentredClimbMs : 1;

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
}
