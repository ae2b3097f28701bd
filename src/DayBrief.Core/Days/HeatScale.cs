namespace DayBrief.Days;

/// <summary>Scales the heating of a day so that it reaches the temperature it is said to reach.</summary>
internal static class HeatScale
{
    private const double Most = 8;
    private const double ToleranceK = 0.02;

    /// <summary>The course of a day: as the energy balance has it, or scaled to the assumed maximum.</summary>
    /// <remarks>Regula falsi (Illinois) on the factor; the maximum rises with it. Where even 8 times the heat does not
    /// reach the maximum, or none is already too much, the nearest course is given.</remarks>
    public static DayTrack Course(DayFrame frame, DayMember member, int parts, double firstGuess = 1)
    {
        var run = new DayRun(frame, member, parts);
        var assumptions = frame.Assumptions;
        if ((assumptions.MixedTemperature ?? assumptions.MaxTemperature) is not { } temperature)
            return run.With(1);
        var mixed = assumptions.MixedTemperature is not null;
        var target = temperature.Kelvins + member.MaxTemperatureK;
        double Miss(DayTrack track) => (mixed ? track.MaxMixedKelvins : track.MaxScreenKelvins) - target;
        return Solve(run, Miss, firstGuess);
    }

    private static DayTrack Solve(DayRun run, Func<DayTrack, double> miss, double guess)
    {
        var track = run.With(guess);
        var (factor, value) = (guess, miss(track));
        if (!double.IsFinite(value) || Math.Abs(value) < ToleranceK)
            return track;
        var (low, lowValue, high, highValue) = (0.0, double.NaN, Most, double.NaN);
        for (var i = 0; i < 30; i++)
        {
            if (value < 0)
                (low, lowValue) = (factor, value);
            else
                (high, highValue) = (factor, value);
            factor = Next(low, lowValue, high, highValue, factor);
            track = run.With(factor);
            value = miss(track);
            if (!double.IsFinite(value))
                value = -1;
            if (Math.Abs(value) < ToleranceK || high - low < 1e-3)
                break;
        }

        return track;
    }

    private static double Next(double low, double lowValue, double high, double highValue, double last)
    {
        if (double.IsNaN(highValue))
            return Math.Min(Most - 1e-4, last * 2.5);
        if (double.IsNaN(lowValue))
            return last / 2.5 < 0.02 ? 0 : last / 2.5;
        var secant = low - (lowValue * (high - low) / (highValue - lowValue));
        return Math.Clamp(secant, low + (0.05 * (high - low)), high - (0.05 * (high - low)));
    }
}
