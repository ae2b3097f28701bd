using System.Collections.Immutable;
using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>What is assumed about a day besides the ascent and the site. Everything has a default.</summary>
public sealed record DayAssumptions
{
    /// <summary>Forecast maximum of the screen temperature; the heating is then scaled to reach it.</summary>
    public Temperature? MaxTemperature { get; init; }

    /// <summary>Maximum of the stirred layer itself, brought dry-adiabatically to the ground; the heating is then scaled
    /// to reach it. Comes before <see cref="MaxTemperature"/>.</summary>
    public Temperature? MixedTemperature { get; init; }

    /// <summary>Local time at which the maximum is reached; null where it is the day's greatest, whenever that comes.</summary>
    public TimeOnly? MaximumAt { get; init; }

    /// <summary>Cover of cloud that is not made by thermals, oktas; ignored where <see cref="CloudByHour"/> speaks.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 8.</exception>
    public double CloudOktas
    {
        get;
        init => field = Guard.Finite(value, 0, 8);
    }

    /// <summary>Cover by local time, in order; each holds until the next, the first also before it.</summary>
    public ImmutableArray<CloudFrom> CloudByHour { get; init; } = [];

    /// <summary>Wind at the ground by local time, in order; each holds until the next, the first also before it. Comes before
    /// the morning's wind of the ascent.</summary>
    /// <exception cref="ArgumentException">The times are not in order.</exception>
    public ImmutableArray<WindFrom> WindByHour
    {
        get;
        init => field = InOrder(value);
    } = [];

    /// <summary>Pressure at the field reduced to sea level by the standard atmosphere (QNH); null when not known.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 850 to 1100 hPa.</exception>
    public Pressure? Qnh
    {
        get;
        init => field = value is { } known ? Pressure.FromHectopascals(Guard.Finite(known.Hectopascals, 850, 1100)) : null;
    }

    /// <summary>Prescribed surface fluxes; replace the energy balance.</summary>
    public FluxSeries? Flux { get; init; }

    /// <summary>The usual entrainment ratio A [Tennekes1973], [Stull1988].</summary>
    public const double UsualEntrainmentRatio = 0.2;

    /// <summary>Entrainment ratio A; null for the site's or the usual one.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 1.</exception>
    public double? EntrainmentRatio
    {
        get;
        init => field = value is { } known ? Guard.Finite(known, 0, 1) : null;
    }

    /// <summary>The gentle sinking of a day on which people fly, s⁻¹: 2 mm/s at 1000 m, half of what published fair-weather
    /// cases over sea have (4.3·10⁻⁶, [Siebesma2003]).</summary>
    public const double UsualDivergencePerSecond = 2e-6;

    /// <summary>Divergence D, s⁻¹: the air sinks at D z and warms by it. 10⁻⁵ in a strong anticyclone. Null when not known:
    /// then it is <see cref="UsualDivergencePerSecond"/> of air that its own radiation cools as fast as the sinking warms it, so
    /// that the air aloft stays as the ascent has it; none with prescribed fluxes.</summary>
    /// <remarks>Chosen on physical grounds and tested by leaving one site out (docs/physics.md, docs/verification.md).</remarks>
    /// <exception cref="ArgumentOutOfRangeException">Outside −10⁻⁴ to 10⁻⁴.</exception>
    public double? DivergencePerSecond
    {
        get;
        init => field = value is { } known ? Guard.Finite(known, -1e-4, 1e-4) : null;
    }

    /// <summary>Cooling of the free air above the layer by its own radiation, K/h; null when not known. 0.08 is usual under a
    /// clear sky.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside −3 to 3.</exception>
    public double? CoolingKelvinsPerHour
    {
        get;
        init => field = value is { } known ? Guard.Finite(known, -3, 3) : null;
    }

    /// <summary>Cumulus neither shades the ground nor carries air out of the layer (research cases).</summary>
    public bool WithoutCumulus { get; init; }

    /// <summary>A slab heated from below and nothing else: the baseline of the verification.</summary>
    internal bool Plain { get; init; }

    /// <summary>The same with what the site states about its air, where nothing was assumed about it.</summary>
    internal DayAssumptions At(Site site) => this with
    {
        DivergencePerSecond = DivergencePerSecond ?? site.SinkingPerSecond,
        CoolingKelvinsPerHour = CoolingKelvinsPerHour ?? site.CoolingKelvinsPerHour,
        EntrainmentRatio = EntrainmentRatio ?? site.EntrainmentRatio,
    };

    /// <summary>The divergence that is used.</summary>
    internal double Divergence => DivergencePerSecond ?? 0;

    /// <summary>The divergence of air that is cooled as fast as it warms.</summary>
    internal double HeldDivergence =>
        DivergencePerSecond is null && CoolingKelvinsPerHour is null && Flux is null && Air.IsDefaultOrEmpty ? UsualDivergencePerSecond : 0;

    /// <summary>Profiles of later hours, forecast or measured: the air aloft changes as they do. Empty where none is known.</summary>
    public ImmutableArray<Soundings.Sounding> Air { get; init; } = [];

    /// <summary>Warming of the whole column by advection, K/h.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside −5 to 5.</exception>
    public double WarmingKelvinsPerHour
    {
        get;
        init => field = Guard.Finite(value, -5, 5);
    }

    /// <summary>Moistening of the whole column by advection, g/kg per hour.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside −5 to 5.</exception>
    public double MoisteningGkgPerHour
    {
        get;
        init => field = Guard.Finite(value, -5, 5);
    }

    /// <summary>Members of the ensemble; 0 for none.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 10,000.</exception>
    public int EnsembleSize
    {
        get;
        init => field = (int)Guard.Finite(value, 0, 10_000);
    } = 200;

    /// <summary>Seed of the ensemble; the same seed gives the same figures.</summary>
    public int Seed { get; init; } = 1;

    /// <summary>Cover at a local time, oktas.</summary>
    public double CloudAt(TimeOnly time)
    {
        if (CloudByHour.IsDefaultOrEmpty)
            return CloudOktas;
        var oktas = CloudByHour[0].Oktas;
        foreach (var from in CloudByHour)
        {
            if (from.Time <= time)
                oktas = from.Oktas;
        }

        return oktas;
    }

    /// <summary>Assumed wind at the ground at a local time; null when none is assumed.</summary>
    public WindFrom? WindAt(TimeOnly time) =>
        WindByHour.IsDefaultOrEmpty
            ? null
            : WindByHour.Where(from => from.Time <= time).Cast<WindFrom?>().LastOrDefault() ?? WindByHour[0];

    private static ImmutableArray<WindFrom> InOrder(ImmutableArray<WindFrom> winds)
    {
        for (var i = 1; i < winds.Length; i++)
        {
            if (winds[i].Time <= winds[i - 1].Time)
                throw new ArgumentException($"Times of the wind must be in order; {winds[i].Time:HH:mm} is not.", nameof(winds));
        }

        return winds;
    }
}

/// <summary>Cloud cover from a local time on.</summary>
/// <param name="Time">Local time.</param>
/// <param name="Oktas">Cover in eighths.</param>
public readonly record struct CloudFrom(TimeOnly Time, double Oktas)
{
    /// <summary>Cover in eighths, 0 to 8.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 8.</exception>
    public double Oktas { get; } = Guard.Finite(Oktas, 0, 8);
}
