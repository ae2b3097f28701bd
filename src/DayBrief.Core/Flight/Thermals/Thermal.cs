using DayBrief.Units;
using DayBrief.Updrafts;

namespace DayBrief.Flight.Thermals;

/// <summary>The thermal of the day at one height, as a pilot would describe it: how strong, how wide, how deep, how long.</summary>
/// <remarks>
/// The core updraft is the updraft in the centre and the radius is where the lift ends, both at <see cref="Height"/>; the depth
/// is z_i. A picked thermal goes with height as <see cref="PickedUpdraft"/>, an average one as [Allen2006]: equation 11 turned
/// round gives the w* that such a centre needs, the radius gain is r₂ over the paper's r₂ at that height, and both hold over the
/// height. A core said to carry near the top overshoots: the top is then taken as height/0.9 (picked) or height/0.8 (average).
/// </remarks>
public sealed class Thermal
{
    private const double HighestAverage = 0.8;
    private const double HighestPicked = 0.9;

    /// <summary>A thermal of the given strength and size at one height.</summary>
    /// <param name="coreUpdraft">Updraft in the centre at the height, 0.1 to 20 m/s.</param>
    /// <param name="radiusM">Radius of the lift at the height, 10 to 2000 m.</param>
    /// <param name="depth">Depth of the convective layer above the ground, 100 to 10 000 m.</param>
    /// <param name="height">Height above the ground for which strength and radius hold, 20 m to the depth.</param>
    /// <param name="lifetime">How long lift lasts at any one height, 1 minute or more; null for a lasting thermal.</param>
    /// <param name="windShearMsPerKm">Change of the wind with height, −30 to 30 m/s per km.</param>
    /// <param name="form">The thermal that is circled in, or the average one.</param>
    /// <param name="top">Where a picked thermal ends or the cumulus takes it; null for the layer's depth.</param>
    /// <param name="carried">Share of the steady core that is left at the top: 0 under a blue sky.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public Thermal(
        Speed coreUpdraft, double radiusM, Height depth, Height height, TimeSpan? lifetime = null, double windShearMsPerKm = 0,
        ThermalForm form = ThermalForm.Picked, Height? top = null, double carried = 0)
    {
        Guard.Finite(coreUpdraft.MetresPerSecond, 0.1, 20, nameof(coreUpdraft));
        Guard.Finite(depth.Metres, 100, 10_000, nameof(depth));
        Guard.Finite(height.Metres, 20, depth.Metres, nameof(height));
        if (lifetime is { } life)
            Guard.Finite(life.TotalSeconds, 60, name: nameof(lifetime));
        (CoreUpdraft, Depth, Height, Lifetime, Form) = (coreUpdraft, depth, height, lifetime, form);
        RadiusM = Guard.Finite(radiusM, 10, 2000);
        WindShearMsPerKm = Guard.Finite(windShearMsPerKm, -30, 30);
        Carried = Guard.Finite(carried, 0, 1);
        TopM = Math.Max(
            Guard.Finite(top?.Metres ?? depth.Metres, 50, 40_000, nameof(top)),
            height.Metres / (form == ThermalForm.Picked ? HighestPicked : HighestAverage));
        var fraction = height.Metres / TopM;
        var average = coreUpdraft.MetresPerSecond / AllenUpdraft.CoreFactor(AllenProfile.CoreRatio(RadiusM));
        (SteadyCoreMs, QuotedRadiusM) = (
            coreUpdraft.MetresPerSecond / PickedUpdraft.Strength(height.Metres, depth.Metres, TopM, Carried),
            RadiusM / PickedUpdraft.RadiusAtM(height.Metres, depth.Metres, 1));
        RadiusGain = RadiusM / AllenUpdraft.Radius(TopM, fraction, 1, least: 0);
        WStarMs = form == ThermalForm.Picked ? SteadyCoreMs / PickedUpdraft.CoreOverWStar : average / AllenUpdraft.MeanUpdraft(1, fraction);
    }

    /// <summary>Updraft in the centre at the height.</summary>
    public Speed CoreUpdraft { get; }

    /// <summary>Radius of the lift at the height, m.</summary>
    public double RadiusM { get; }

    /// <summary>Depth of the convective layer above the ground.</summary>
    public Height Depth { get; }

    /// <summary>Height above the ground for which strength and radius hold.</summary>
    public Height Height { get; }

    /// <summary>How long lift lasts at any one height; null if it lasts.</summary>
    public TimeSpan? Lifetime { get; }

    /// <summary>Change of the wind with height, m/s per km.</summary>
    public double WindShearMsPerKm { get; }

    /// <summary>The thermal that is circled in, or the average one.</summary>
    public ThermalForm Form { get; }

    /// <summary>Where it ends or the cumulus takes it, m above the ground.</summary>
    public double TopM { get; }

    /// <summary>Share of the steady core that is left at the top.</summary>
    public double Carried { get; }

    /// <summary>The w* of a layer that has such a thermal, m/s.</summary>
    public double WStarMs { get; }

    /// <summary>Average thermal: radius over the paper's radius at that height.</summary>
    public double RadiusGain { get; }

    /// <summary>Picked thermal: core between the growth near the ground and the end, m/s.</summary>
    internal double SteadyCoreMs { get; }

    /// <summary>Picked thermal: radius at 0.4 of the depth, m.</summary>
    internal double QuotedRadiusM { get; }

    /// <summary>The fully grown thermal at a height above the ground.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Height below 0 or not finite.</exception>
    public LiftSection At(Height height)
    {
        var heightM = Guard.Finite(height.Metres, 0, name: nameof(height));
        if (Form == ThermalForm.Average)
            return new(AllenUpdraft.Smooth(WStarMs, TopM, heightM, RadiusGain));
        var core = SteadyCoreMs * PickedUpdraft.Strength(heightM, Depth.Metres, TopM, Carried);
        return new(core, Math.Max(10, PickedUpdraft.RadiusAtM(heightM, Depth.Metres, QuotedRadiusM)), heightM / TopM, SinkMs);
    }

    /// <summary>Air between the thermals, m/s: what goes up on average comes down between, [Allen2006] equation 21 for the layer's
    /// own average thermal at 0.4 of its depth.</summary>
    internal double SinkMs => field < 0 ? field : field = AllenUpdraft.Smooth(WStarMs, Depth.Metres, PickedUpdraft.QuotedAt * Depth.Metres, 1).SurroundingSinkMs;

    /// <summary>The same thermal described at another height.</summary>
    /// <remarks>Null where the profile carries no updraft of 0.1 m/s or more, so that there is nothing to describe.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">Height outside 20 m to the depth.</exception>
    public Thermal? DescribedAt(Height height)
    {
        Guard.Finite(height.Metres, 20, Depth.Metres, nameof(height));
        var there = At(height);
        return there.CentreUpdraftMs < 0.1 || there.HeightFraction > (Form == ThermalForm.Picked ? HighestPicked : HighestAverage)
            ? null
            : new(
                Speed.FromMetresPerSecond(there.CentreUpdraftMs), there.RadiusM, Depth, height, Lifetime, WindShearMsPerKm,
                Form, Height.FromMetres(TopM), Carried);
    }
}
