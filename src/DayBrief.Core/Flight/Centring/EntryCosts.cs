using DayBrief.Flight.Centring.Kernel;
using DayBrief.Flight.Gliders;

namespace DayBrief.Flight.Centring;

/// <summary>What holding the wrong speed or bank, or rolling slowly, costs in today's thermal.</summary>
internal static class EntryCosts
{
    private const double KnotsMs = 1852.0 / 3600;

    /// <summary>Each inaccuracy kept up through the encounter, against the accurate way met with the same encounters.</summary>
    public static IReadOnlyList<EntryCost> Of(Briefing briefing, Flying accurate, EncounterFlight flight, EncounterKernel.Clock clock)
    {
        var circle = briefing.Circle;
        var updraft = briefing.Thermal.At(briefing.Thermal.Height);
        var climb = SwingTable.MeanClimbMs(updraft, circle, 0);
        var clean = flight.Fly(accurate, clock);
        return [.. Inaccuracies(circle).Select(each =>
        {
            var own = briefing.Flown(each.Circle);
            var flying = accurate with { Bank = own.Bank, Speed = own.Speed, RollRate = own.RollRate };
            var lost = Estimate.OfDifference(clean.Three, flight.Fly(flying, clock).Three, 1.0 / 180);
            return new EntryCost(each.What, each.Circle.RadiusM - circle.RadiusM, climb - SwingTable.MeanClimbMs(updraft, each.Circle, 0), lost);
        })];
    }

    private static IEnumerable<(string What, Circle Circle)> Inaccuracies(Circle circle)
    {
        var (glider, bank, speed) = (circle.Glider, circle.BankDeg, circle.SpeedMs);
        yield return ("+5 kt", Circle.At(glider, bank, speed + (5 * KnotsMs)));
        yield return ("+10 kt", Circle.At(glider, bank, speed + (10 * KnotsMs)));
        yield return ("+5°", Circle.At(glider, bank + 5, speed));
        yield return ("-5°", Circle.At(glider, bank - 5, speed));
        yield return ("slow roll", Circle.At(glider.Rolling(2), bank, speed));
    }
}
