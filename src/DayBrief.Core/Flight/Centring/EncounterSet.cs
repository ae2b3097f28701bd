using DayBrief.Flight.Thermals;
using DayBrief.Numerics;

namespace DayBrief.Flight.Centring;

/// <summary>The encounters that every way of flying meets: where the path passes, what the air does, what the pilot's seat says.</summary>
/// <remarks>
/// Common random numbers: an encounter is a function of seed and number alone, so a difference between two ways is a
/// difference of flying. Paths pass the axis within 0.7 radii, where the updraft is a fifth of the core or more. The first turn
/// goes the right way with a chance of 0.5 on the axis rising to 0.85 from half a radius off it, where one wing is felt to
/// rise [FAA-13A] (the numbers are assumed). A short-lived thermal is met between 5 and 75 % of its life. The nearest neighbour
/// lies at a random distance by the density of [Allen2006] equation 20, beyond two radii, with 0.4 to 0.9 of the strength.
/// </remarks>
internal sealed class EncounterSet
{
    /// <summary>Simulated time of an encounter, s: the 5 minutes of the longer result.</summary>
    public const int Seconds = 300;

    /// <summary>Widest kernel; the number of encounters is a multiple of it.</summary>
    public const int Block = 16;

    private const int Lots = 8;

    private EncounterSet(Thermal thermal, int count)
    {
        Count = count;
        StartY = -(float)(thermal.RadiusM + 40);
        (Miss, Side, AgeShare) = (new float[count], new float[count], new float[count]);
        (NeighbourX, NeighbourY, NeighbourStrength) = (new float[count], new float[count], new float[count]);
        (ShearX, ShearY, Dither) = (new float[count], new float[count], new float[count]);
        Gusts = new float[(Seconds + 1) * count];
    }

    public int Count { get; }

    /// <summary>Where along the path an encounter begins, m: just outside the updraft.</summary>
    public float StartY { get; }

    /// <summary>How far right of the axis the path passes, m.</summary>
    public float[] Miss { get; }

    /// <summary>First turn: 1 left, −1 right.</summary>
    public float[] Side { get; }

    /// <summary>Share of the thermal's life gone by at the start; one half for a lasting one.</summary>
    public float[] AgeShare { get; }

    public float[] NeighbourX { get; }

    public float[] NeighbourY { get; }

    public float[] NeighbourStrength { get; }

    /// <summary>Direction of the shear against the approach.</summary>
    public float[] ShearX { get; }

    public float[] ShearY { get; }

    /// <summary>Share of a step, −½ to ½, by which due times are spread, so that a delay is right on average at any step.</summary>
    public float[] Dither { get; }

    /// <summary>Vertical gusts, m/s: row of a second, column of an encounter.</summary>
    public float[] Gusts { get; }

    public static EncounterSet Create(Thermal thermal, CounterRandom random, int count, int threads = 1)
    {
        var set = new EncounterSet(thermal, (count + Block - 1) / Block * Block);
        Parallel.For(0, set.Count, new ParallelOptions { MaxDegreeOfParallelism = threads }, encounter =>
            set.Draw(thermal, random.Stream(encounter), encounter));
        return set;
    }

    private void Draw(Thermal thermal, CounterRandom random, int encounter)
    {
        var miss = 0.7 * thermal.RadiusM * ((2 * random.Uniform(0)) - 1);
        var chance = 0.5 + (0.35 * Math.Min(1, Math.Abs(miss) / (0.5 * thermal.RadiusM)));
        var right = random.Uniform(1) < chance;
        Miss[encounter] = (float)miss;
        Side[encounter] = (miss > 0) == right ? 1 : -1;
        AgeShare[encounter] = thermal.Lifetime is null ? 0.5f : (float)(0.05 + (0.7 * random.Uniform(2)));
        var density = Spacing.UpdraftsPerSquareMetre(thermal.Depth.Metres, thermal.RadiusM);
        var least = 2 * thermal.RadiusM;
        var distance = Math.Sqrt((least * least) - (Math.Log(1 - random.Uniform(3)) / (Math.PI * density)));
        (NeighbourX[encounter], NeighbourY[encounter]) = Towards(random.Uniform(4), distance);
        NeighbourStrength[encounter] = (float)(0.4 + (0.5 * random.Uniform(5)));
        (ShearX[encounter], ShearY[encounter]) = Towards(random.Uniform(6), 1);
        Dither[encounter] = (float)(random.Uniform(7) - 0.5);
        var gusts = Gusts.AsSpan(encounter);
        Turbulence.Fill(gusts, Count, random.Stream(Lots), Turbulence.ShareOfCore * thermal.CoreUpdraft.MetresPerSecond);
    }

    private static (float X, float Y) Towards(double turn, double distance) =>
        ((float)(distance * Math.Cos(2 * Math.PI * turn)), (float)(distance * Math.Sin(2 * Math.PI * turn)));
}
