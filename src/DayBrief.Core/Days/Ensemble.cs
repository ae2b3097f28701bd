using DayBrief.Numerics;

namespace DayBrief.Days;

/// <summary>Many courses of one day, as far apart as what is not known about it allows.</summary>
internal sealed class Ensemble
{
    /// <summary>How far each input lies from what is assumed, one standard deviation.</summary>
    /// <remarks>From what such inputs are known to be worth (common practice, no source, except the air aloft): a maximum temperature
    /// forecast for the same day ±1.5 K; dew point ±1.2 K; cloud ±1.5 oktas; ground moisture ±0.25 of α, one step of the
    /// table of wetness; the air aloft ±1.2 K (between morning and afternoon ascents of published pairs it changed by 1.1 K on
    /// average); entrainment ratio ±30 %; divergence ±3.5·10⁻⁶ s⁻¹ (3.5 mm/s at 1000 m); sunlight ±8 %; the share of a surprising
    /// maximum that is other air ±0.25.</remarks>
    public static readonly DayMember Spread = new(1.5, 1.2, 1.5, 0.25, 1.2, 0.3, 3.5e-6, 0.08, 0.25);

    private const int Parts = 4;

    private Ensemble(DayMember[] members, Headline[] headlines, double[][] depthM) =>
        (Members, Headlines, DepthM) = (members, headlines, depthM);

    public DayMember[] Members { get; }

    public Headline[] Headlines { get; }

    /// <summary>How broad the thermals of each course are (<see cref="TypeScore"/>); NaN without usable thermals.</summary>
    public double[] Broadness { get; private init; } = [];

    /// <summary>Depth of the layer by course and step, m; NaN without one.</summary>
    public double[][] DepthM { get; }

    /// <summary>Share of the courses without a usable thermal, 0 to 1.</summary>
    public double NoneUsable => Headlines.Count(headline => headline.FirstUsable < 0) / (double)Headlines.Length;

    public static Ensemble Of(DayFrame frame, double centralFactor, double wholeInflow, double cloudDepthM)
    {
        var (size, seed) = (frame.Assumptions.EnsembleSize, frame.Assumptions.Seed);
        var members = new DayMember[size];
        var headlines = new Headline[size];
        var (depths, broad) = (new double[size][], new double[size]);
        Parallel.For(0, size, i =>
        {
            members[i] = Drawn(seed, i);
            var track = HeatScale.Course(frame, members[i], Parts, centralFactor, wholeInflow);
            (headlines[i], depths[i]) = (Headline.Of(track, frame.Site), track.DepthM);
            broad[i] = TypeScore.Of(track, headlines[i], cloudDepthM).Broadness;
        });
        return new(members, headlines, depths) { Broadness = broad };
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
            Spread.DivergencePerSecond * Normal(6),
            Math.Exp(Spread.SunFactor * Normal(7)),
            Math.Clamp(DayMember.UsualInflowShare + (Spread.InflowShare * Normal(8)), 0, 1));
    }
}
