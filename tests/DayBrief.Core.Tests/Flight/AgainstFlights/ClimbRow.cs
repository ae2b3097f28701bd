namespace DayBrief.Flight.AgainstFlights;

/// <summary>One climb turn by turn, flown or simulated, as ../shared/field/turns.csv has it.</summary>
/// <param name="ClimbMs">Climb of each turn by energy height.</param>
/// <param name="PeriodS">Time of each turn.</param>
/// <param name="SwingMs">Amplitude of the climb round each circle, first harmonic.</param>
/// <param name="ShiftRadii">By how much the centre moved from each turn to the next, in radii, in the air's frame.</param>
internal sealed record ClimbRow(double[] ClimbMs, double[] PeriodS, double[] SwingMs, double[] ShiftRadii)
{
    public int Turns => ClimbMs.Length;

    /// <summary>Best mean of three turns running.</summary>
    public double Best3Ms => Enumerable.Range(0, Turns - 2).Max(turn => (ClimbMs[turn] + ClimbMs[turn + 1] + ClimbMs[turn + 2]) / 3);

    public double FirstGoodTurn => 1 + Array.FindIndex(ClimbMs, climb => climb >= 0.9 * Best3Ms);

    /// <summary>Mean climb of the first three minutes; null where it lasted less.</summary>
    public double? First3MinMs
    {
        get
        {
            var (time, gained) = (0.0, 0.0);
            for (var turn = 0; turn < Turns && time < 180; turn++)
            {
                var part = Math.Min(PeriodS[turn], 180 - time);
                (time, gained) = (time + part, gained + (part * ClimbMs[turn]));
            }

            return time < 180 ? null : gained / 180;
        }
    }

    /// <summary>Standard deviation of the difference from turn to turn.</summary>
    public double TurnToTurnMs
    {
        get
        {
            var steps = Enumerable.Range(0, Turns - 1).Select(turn => ClimbMs[turn + 1] - ClimbMs[turn]).ToArray();
            var mean = steps.Average();
            return Math.Sqrt(steps.Average(step => (step - mean) * (step - mean)));
        }
    }
}
