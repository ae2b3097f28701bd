namespace DayBrief.Flight.Centring;

/// <summary>When a pilot gives a thermal up.</summary>
/// <param name="PoorShare">A turn below this share of the day's usual climb is not worth another one.</param>
/// <param name="FadedShare">Two turns running below this share of the best so far: it has faded, as [FAA-13A] has it (three quarters).</param>
/// <remarks>Set once on the given half of the flight recordings: a third of the turn-ins are left before two turns, and kept climbs
/// last six turns; the handbook has three quarters for the second share.</remarks>
internal sealed record Leaving(double PoorShare, double FadedShare)
{
    public static Leaving AsFlown { get; } = new(0.25, 0.7);

    /// <summary>Turns flown before leaving; all that were recorded if it is kept to the end.</summary>
    public int TurnsKept(TurnRecord record, double usualMs)
    {
        var best = double.NegativeInfinity;
        for (var turn = 0; turn < record.Count; turn++)
        {
            var climb = record.ClimbMs(turn);
            best = Math.Max(best, climb);
            var faded = turn >= 2 && record.ClimbMs(turn - 1, 2) < FadedShare * best;
            if (faded || (turn < 2 && climb < PoorShare * usualMs))
                return turn + 1;
        }

        return record.Count;
    }
}
