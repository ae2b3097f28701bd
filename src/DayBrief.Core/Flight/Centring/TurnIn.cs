using DayBrief.Flight.Centring.Kernel;
using DayBrief.Flight.Gliders;
using DayBrief.Flight.Thermals;

namespace DayBrief.Flight.Centring;

/// <summary>When to begin the first turn, so that the circle comes to lie beside the core.</summary>
internal static class TurnIn
{
    /// <summary>How far beside the core a path that is flown for a thermal passes, in radii: the middle of what encounters are drawn from.</summary>
    private const double Beside = 0.5 * (EncounterSet.NearestMiss + EncounterSet.FarthestMiss);

    /// <summary>Whole seconds from the surge to the turn.</summary>
    /// <remarks>Geometry: lift of a share s of the core is felt at √(1 − s) radii, of which the way to abeam of the core is
    /// √(1 − s − b²) for a path b radii beside it; the seat's lag, the reaction and half of the roll-in are taken off. In a thermal whose lift
    /// falls off otherwise the same share is looked for.</remarks>
    public static double AfterSurgeS(Thermal thermal, Circle circle, double reactionS)
    {
        var section = thermal.At(thermal.Height);
        var felt = Briefing.SurgeShare * section.CentreUpdraftMs;
        var (near, far) = (0.0, 2 * thermal.RadiusM);
        for (var halving = 0; halving < 30; halving++)
        {
            var middle = 0.5 * (near + far);
            (near, far) = section.UpdraftMs(middle) >= felt ? (middle, far) : (near, middle);
        }

        var beside = Beside * thermal.RadiusM;
        var abeam = Math.Sqrt(Math.Max(0, (near * near) - (beside * beside)));
        return Math.Max(0, Math.Floor((abeam / circle.SpeedMs) - Tempo.Feel - reactionS - CentreShift.HalfRollS(circle)));
    }
}
