using DayBrief.Units;

namespace DayBrief.Flight.Thermals;

/// <summary>A thermal at one height: how strong in the centre, how wide, and how it falls off with distance.</summary>
/// <remarks>The picked thermal falls as 1 − (r/R)² to the sink of the surroundings, the average one as [Allen2006] has it, smoothly between
/// his rows. Speeds in m/s, lengths in m.</remarks>
public sealed class LiftSection
{
    private readonly AllenUpdraft? _average;

    /// <summary>The average thermal.</summary>
    internal LiftSection(AllenUpdraft average)
    {
        _average = average;
        (CentreUpdraftMs, RadiusM, HeightFraction, SurroundingSinkMs) =
            (average.CentreUpdraftMs, average.RadiusM, average.HeightFraction, average.SurroundingSinkMs);
    }

    /// <summary>The picked thermal.</summary>
    internal LiftSection(double coreMs, double radiusM, double heightFraction, double sinkMs) =>
        (CentreUpdraftMs, RadiusM, HeightFraction, SurroundingSinkMs) = (coreMs, radiusM, heightFraction, sinkMs);

    /// <summary>Updraft in the centre; 0 or below where nothing rises.</summary>
    public double CentreUpdraftMs { get; }

    /// <summary>Radius at which the lift ends.</summary>
    public double RadiusM { get; }

    /// <summary>Height over the depth of the thermal.</summary>
    public double HeightFraction { get; }

    /// <summary>Air between the thermals, never above 0.</summary>
    public double SurroundingSinkMs { get; }

    /// <summary>Allen's updraft behind the average thermal; null for the picked one.</summary>
    internal AllenUpdraft? Average => _average;

    /// <summary>Vertical speed of the air at a distance from the axis.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or not finite distance.</exception>
    public Speed UpdraftAt(double distanceM) => Speed.FromMetresPerSecond(UpdraftMs(Guard.Finite(distanceM, 0)));

    internal double UpdraftMs(double distanceM) => _average is { } average
        ? average.UpdraftMs(distanceM)
        : Math.Max(SurroundingSinkMs, CentreUpdraftMs * (1 - (distanceM * distanceM / (RadiusM * RadiusM))));

    /// <summary>By how much lift falls per metre of distance, 1/s: a difference over 2 m.</summary>
    public double SlopePerS(double distanceM) => (UpdraftMs(distanceM - 1) - UpdraftMs(distanceM + 1)) / 2;
}
