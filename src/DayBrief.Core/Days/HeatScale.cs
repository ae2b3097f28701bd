namespace DayBrief.Days;

/// <summary>Scales the heating of a day so that it reaches the temperature it is said to reach.</summary>
internal static class HeatScale
{
    private const double Most = 8;
    private const double ToleranceK = 0.02;
    private const double WorthInflowK = 0.05;

    /// <summary>The course of a day: as the energy balance has it, or scaled to the assumed maximum.</summary>
    /// <remarks>Regula falsi (Illinois) on the factor; the maximum rises with it. The ground gives no more than the driest ground
    /// would (<see cref="DayRun"/>): a maximum beyond that needs warmer air that flows in at all heights, which makes
    /// thermals no deeper. Where no heat is already too much, the nearest course is given.</remarks>
    public static DayTrack Course(DayFrame frame, DayMember member, int parts, double firstGuess = 1, double inflowKelvinsPerHour = 0)
    {
        var run = new DayRun(frame, member, parts);
        var assumptions = frame.Assumptions;
        if ((assumptions.MixedTemperature ?? assumptions.MaxTemperature) is not { } temperature)
            return run.With(1);
        var target = temperature.Kelvins + member.MaxTemperatureK;
        double Miss(DayTrack track) => Reached(frame, track) - target;
        var inflow = member.InflowShare * inflowKelvinsPerHour;
        var track = Solve(factor => run.With(factor, inflow), Miss, firstGuess);
        return frame.Prescribed is null && Miss(track) < -WorthInflowK ? WithInflow(run, frame, track, Miss) : track;
    }

    /// <summary>What of a course is held against the temperature asked for: at the time asked for, or the greatest.</summary>
    public static double Reached(DayFrame frame, DayTrack track)
    {
        var (mixed, at) = (frame.Assumptions.MixedTemperature is not null, frame.MaximumStep);
        if (at >= 0 && (mixed ? track.MixedKelvins : track.ScreenKelvins)[at] is var then && double.IsFinite(then))
            return then;
        return mixed ? track.MaxMixedKelvins : track.MaxScreenKelvins;
    }

    /// <summary>Air that flows in, K/h, if all of the difference between the temperature asked for and the one that sun and ground
    /// give came from it; 0 where nothing is asked for or fluxes are given.</summary>
    public static double WholeInflow(DayFrame frame, DayTrack free) =>
        (frame.Assumptions.MixedTemperature ?? frame.Assumptions.MaxTemperature) is { } asked && frame.Prescribed is null && !frame.Assumptions.Plain && frame.Hourly is null
        && Reached(frame, free) is var own && double.IsFinite(own)
            ? (asked.Kelvins - own) / HoursToMaximum(frame)
            : 0;

    /// <summary>From the first step to the maximum; two thirds of the day where its hour is not given.</summary>
    public static double HoursToMaximum(DayFrame frame) =>
        Math.Max(1, ((frame.MaximumStep >= 0 ? frame.MaximumStep : frame.Times.Length * 2 / 3) - frame.FirstStep) / 12.0);

    /// <summary>The rest that the ground cannot give, as air that flows in; three steps of the secant are enough.</summary>
    private static DayTrack WithInflow(DayRun run, DayFrame frame, DayTrack dry, Func<DayTrack, double> miss)
    {
        var (rate, value) = (dry.InflowKelvinsPerHour, miss(dry));
        var (next, track) = (rate - (value / HoursToMaximum(frame)), dry);
        for (var i = 0; i < 4 && double.IsFinite(next); i++)
        {
            track = run.With(dry.HeatFactor, next, beyondSun: true);
            var reached = miss(track);
            if (!double.IsFinite(reached) || Math.Abs(reached) < ToleranceK || reached == value)
                break;
            (rate, value, next) = (next, reached, next - (reached * (next - rate) / (reached - value)));
        }

        return track;
    }

    private static DayTrack Solve(Func<double, DayTrack> run, Func<DayTrack, double> miss, double guess)
    {
        var track = run(guess);
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
            track = run(factor);
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
