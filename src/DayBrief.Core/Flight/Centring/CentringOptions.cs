using DayBrief.Flight.Gliders;
using DayBrief.Units;

namespace DayBrief.Flight.Centring;

/// <summary>How a study is done; what is left out is chosen for the day.</summary>
public sealed record CentringOptions
{
    /// <summary>Bank of the circle, 15 to 55°; the optimum's, held to 25–45° and to the steepest, if null.</summary>
    public double? BankDeg { get; init; }

    /// <summary>Speed in the circle; the best one at the bank if null.</summary>
    public Speed? Speed { get; init; }

    /// <summary>How steep and how near the stall at most, corrections included.</summary>
    public CircleLimits Limits { get; init; } = new();

    /// <summary>How well the pilot does what is advised.</summary>
    public PilotSkill Skill { get; init; } = PilotSkill.Practised;

    /// <summary>Encounters that judge the ways, 64 to 100 000; rounded up to sixteens.</summary>
    public int Encounters { get; init; } = 2048;

    /// <summary>Seed: the same seed gives the same result to the last bit.</summary>
    public long Seed { get; init; } = 1;

    /// <summary>Most threads used; does not change the result.</summary>
    public int Threads { get; init; } = Environment.ProcessorCount;

    /// <summary>Whether each way is also flown with each error, and the entry's inaccuracies are costed.</summary>
    public bool WithErrors { get; init; } = true;
}
