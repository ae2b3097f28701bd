using DayBrief.Numerics;

namespace DayBrief.Days;

/// <summary>Many courses of one day, as far apart as what is not known about it allows.</summary>
internal sealed class Ensemble
{
    /// <summary>How far each input lies from what is assumed, one standard deviation.</summary>
    /// <remarks>Set once, from what such inputs are known to be worth (common practice, no source): a maximum temperature
    /// forecast for the same day ±1.5 K; dew point ±1.2 K; cloud ±1 okta; ground moisture ±0.12 of α; the air aloft ±0.9 K
    /// (between morning and afternoon ascents of published pairs it changed by 1.1 K on average); entrainment ratio ±30 %; divergence ±3.5·10⁻⁶ s⁻¹
    /// (3.5 mm/s at 1000 m).</remarks>
    public static readonly DayMember Spread = new(1.5, 1.2, 1, 0.12, 0.9, 0.3, 3.5e-6);

    private const int Parts = 4;

    private Ensemble(DayMember[] members, Headline[] headlines) => (Members, Headlines) = (members, headlines);

    public DayMember[] Members { get; }

    public Headline[] Headlines { get; }

    /// <summary>Share of the courses without a usable thermal, 0 to 1.</summary>
    public double NoneUsable => Headlines.Count(headline => headline.FirstUsable < 0) / (double)Headlines.Length;

    public static Ensemble Of(DayFrame frame, double centralFactor)
    {
        var (size, seed) = (frame.Assumptions.EnsembleSize, frame.Assumptions.Seed);
        var members = new DayMember[size];
        var headlines = new Headline[size];
        Parallel.For(0, size, i =>
        {
            members[i] = Drawn(seed, i);
            headlines[i] = Headline.Of(HeatScale.Course(frame, members[i], Parts, centralFactor), frame.Site);
        });
        return new(members, headlines);
    }

    /// <summary>A number of each course in rising order, the given value standing for "none".</summary>
    public double[] Sorted(Func<Headline, double> figure, double none)
    {
        var values = Headlines.Select(headline => figure(headline) is var value && double.IsNaN(value) ? none : value).ToArray();
        Array.Sort(values);
        return values;
    }

    private static DayMember Drawn(int seed, int member)
    {
        var random = CounterRandom.FromSeed(seed).Stream(member);
        double Normal(int variable) => Math.Clamp(random.Normal(variable), -3, 3);
        return new(
            Spread.MaxTemperatureK * Normal(0),
            Spread.DewPointK * Normal(1),
            Spread.CloudOktas * Normal(2),
            Spread.Moisture * Normal(3),
            Spread.AloftK * Normal(4),
            Math.Exp(Spread.EntrainmentFactor * Normal(5)),
            Spread.DivergencePerSecond * Normal(6));
    }
}
