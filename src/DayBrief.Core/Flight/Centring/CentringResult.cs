using DayBrief.Flight.Gliders;
using DayBrief.Flight.Instruments;
using DayBrief.Flight.Thermals;

namespace DayBrief.Flight.Centring;

/// <summary>What a study found for one thermal, glider and instrument.</summary>
public sealed record CentringResult
{
    /// <summary>The thermal that is flown in.</summary>
    public required Thermal Thermal { get; init; }

    /// <summary>The circle that is flown.</summary>
    public required Circle Circle { get; init; }

    /// <summary>Best circle on the axis, its climb and how flat the optimum is.</summary>
    public required CirclingOptimum Optimum { get; init; }

    /// <summary>Climb of the flown circle on the axis, m/s.</summary>
    public required double CentredClimbMs { get; init; }

    /// <summary>The instrument.</summary>
    public required Variometer Instrument { get; init; }

    /// <summary>Lag of the reading in this circle, degrees of turn.</summary>
    public required double LagDeg { get; init; }

    /// <summary>Lag of the reading in this circle, s: the phase as time, not the instrument's time constant.</summary>
    public required double LagS { get; init; }

    /// <summary>Closed form of the roll-out, for the typical distance of the first circle from the core.</summary>
    public required RollOut RollOut { get; init; }

    /// <summary>Median distance of the first circle's centre from the core in the encounters, m; null if none turned.</summary>
    public required double? FirstOffsetM { get; init; }

    /// <summary>The simulation's best roll-out: the numbers of straighten-and-shift.</summary>
    public required RollOut SimulatedRollOut { get; init; }

    /// <summary>What the swing tells.</summary>
    public required SwingTable Swing { get; init; }

    /// <summary>The ways, the best first; reversing last, whatever it brings.</summary>
    public required IReadOnlyList<WayResult> Ranking { get; init; }

    /// <summary>The ways that cannot be told from the best, with it, the simplest first; empty if the best stands alone.</summary>
    public required IReadOnlyList<CentringWay> Tied { get; init; }

    /// <summary>The way to give: the best, or the simplest of those tied with it; never reversing.</summary>
    public required CentringWay Recommended { get; init; }

    /// <summary>What inaccuracies cost in the recommended way; empty if not asked for.</summary>
    public required IReadOnlyList<EntryCost> EntryCosts { get; init; }

    /// <summary>Encounters that judged the ways.</summary>
    public required int Encounters { get; init; }

    /// <summary>Seed of the encounters.</summary>
    public required long Seed { get; init; }
}

/// <summary>One way's result.</summary>
public sealed record WayResult
{
    /// <summary>The way.</summary>
    public required CentringWay Way { get; init; }

    /// <summary>Mean climb over the first 3 minutes from the edge of the updraft, m/s; times 180 s the height gained.</summary>
    public required Estimate Climb3MinMs { get; init; }

    /// <summary>Mean climb over the first 5 minutes, m/s; times 300 s the height gained.</summary>
    public required Estimate Climb5MinMs { get; init; }

    /// <summary>Height gained in 3 minutes, m.</summary>
    public Estimate Gain3MinM => new(180 * Climb3MinMs.Mean, 180 * Climb3MinMs.HalfWidth95);

    /// <summary>Height gained in 5 minutes, m.</summary>
    public Estimate Gain5MinM => new(300 * Climb5MinMs.Mean, 300 * Climb5MinMs.HalfWidth95);

    /// <summary>Chance to have lost the thermal by 3 minutes (30 s outside any live updraft), per cent.</summary>
    public required Estimate LostPct { get; init; }

    /// <summary>Median of turns until first centred, counting those that never were as the longest; null if half never were,
    /// or if even the centred circle does not climb.</summary>
    public required double? TurnsToCentre { get; init; }

    /// <summary>How its climbs go, in the figures that flight recorders give.</summary>
    public required ClimbFigures Figures { get; init; }

    /// <summary>Climb over 3 minutes behind the best way, m/s, encounter by encounter; 0 for the best. Below 0 reversing was luckier.</summary>
    public required Estimate BehindBestMs { get; init; }

    /// <summary>Numbers chosen for the day, named with their units.</summary>
    public required IReadOnlyDictionary<string, double> Parameters { get; init; }

    /// <summary>What each error costs; empty if not asked for.</summary>
    public required IReadOnlyList<ErrorCost> Errors { get; init; }
}

/// <summary>What an error costs in one way.</summary>
/// <param name="Error">The error.</param>
/// <param name="ClimbLostMs">Climb over 3 minutes lost against the clean way, m/s, encounter by encounter; negative if it helps.</param>
/// <param name="LostMorePct">Percentage points by which the thermal is lost more often.</param>
public sealed record ErrorCost(PilotError Error, Estimate ClimbLostMs, Estimate LostMorePct);

/// <summary>What an inaccuracy costs.</summary>
/// <param name="What">The inaccuracy: <c>+5 kt</c>, <c>+10 kt</c>, <c>+5°</c>, <c>-5°</c> or <c>slow roll</c>.</param>
/// <param name="RadiusGrowthM">Growth of the circle's radius, m; negative if it shrinks.</param>
/// <param name="CentredClimbLostMs">Climb lost when centred, m/s; negative if it helps.</param>
/// <param name="Climb3MinLostMs">Climb over 3 minutes lost in the encounters, m/s.</param>
public sealed record EntryCost(string What, double RadiusGrowthM, double CentredClimbLostMs, Estimate Climb3MinLostMs);
