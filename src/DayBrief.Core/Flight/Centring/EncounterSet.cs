using DayBrief.Flight.Thermals;
using DayBrief.Numerics;

namespace DayBrief.Flight.Centring;

/// <summary>The encounters that every way of flying meets: where the path passes, what the air does, what the pilot's seat says.</summary>
/// <remarks>
/// Common random numbers: an encounter is a function of seed and number alone, so a difference between two ways is a
/// difference of flying. Paths pass 0.2 to 0.6 radii beside the axis: pilots aim at what they see, cloud, birds or other gliders, and pass it
/// at about their circle's radius. The first turn goes the right way with a chance of 0.5 on the axis rising to 0.95 from 0.3 radii
/// off it, where one wing is felt to rise [FAA-13A]. Both were set once on the given half of the flight recordings, by the climb
/// of first turns (docs/technique.md). A short-lived thermal is met between 5 and 75 % of its life. The nearest neighbour
/// lies at a random distance by the density of [Allen2006] equation 20, beyond two radii, with 0.4 to 0.9 of the strength.
/// </remarks>
internal sealed class EncounterSet
{
    /// <summary>Simulated time of an encounter, s: the 5 minutes of the longer result.</summary>
    public const int Seconds = 300;

    /// <summary>Widest kernel; the number of encounters is a multiple of it.</summary>
    public const int Block = 16;

    /// <summary>How far beside the axis paths pass, in radii of the lift.</summary>
    internal const double NearestMiss = 0.2;
    internal const double FarthestMiss = 0.6;

    /// <summary>By how much the wing that is felt to rise raises the chance of turning the right way, and from which distance on in full.</summary>
    private const double WingFelt = 0.45;
    private const double WingFeltFrom = 0.3;

    private const int Lots = 12;

    /// <summary>Speed at which horizontal gusts are met, m/s: that of circling gliders.</summary>
    private const double GustSpeedMs = 27;

    private EncounterSet(Thermal thermal, int count)
    {
        Count = count;
        StartY = -(float)(thermal.RadiusM + 40);
        (Miss, Side, AgeShare) = (new float[count], new float[count], new float[count]);
        (NeighbourX, NeighbourY, NeighbourStrength) = (new float[count], new float[count], new float[count]);
        (ShearX, ShearY, Dither) = (new float[count], new float[count], new float[count]);
        (Strength, SpeedLot, BankLot, PlaceLot) = (new float[count], new float[count], new float[count], new float[count]);
        (Gusts, Along, Breath) = (new float[(Seconds + 1) * count], new float[(Seconds + 1) * count], new float[(Seconds + 1) * count]);
        (AxisX, AxisY) = (new float[(Seconds + 1) * count], new float[(Seconds + 1) * count]);
        WaveScale = (float)(1 / (Turbulence.WanderOverCore * thermal.CoreUpdraft.MetresPerSecond));
    }

    public int Count { get; }

    /// <summary>Where a second of an encounter stands in the series: blocks of encounters one after the other, in each a row a second, so that
    /// a kernel reads straight on.</summary>
    public static int Place(int encounter, int second) => ((((encounter / Block) * (Seconds + 1)) + second) * Block) + (encounter % Block);

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

    /// <summary>Strength of this thermal over that of the day's.</summary>
    public float[] Strength { get; }

    /// <summary>How this pilot holds speed and bank and places corrections today: normal lots of unit size.</summary>
    public float[] SpeedLot { get; }

    public float[] BankLot { get; }

    public float[] PlaceLot { get; }

    /// <summary>Vertical gusts, m/s, by <see cref="Place"/>; so are the next four.</summary>
    public float[] Gusts { get; }

    /// <summary>What horizontal gusts add to the climb by energy, m/s.</summary>
    public float[] Along { get; }

    /// <summary>Breathing of the strength, share.</summary>
    public float[] Breath { get; }

    /// <summary>Speed of the core's wandering, m/s.</summary>
    public float[] AxisX { get; }

    public float[] AxisY { get; }

    /// <summary>What makes the wandering a wave of unit size.</summary>
    public float WaveScale { get; }

    public static EncounterSet Create(Thermal thermal, CounterRandom random, int count, int threads = 1)
    {
        var set = new EncounterSet(thermal, (count + Block - 1) / Block * Block);
        Parallel.For(0, set.Count, new ParallelOptions { MaxDegreeOfParallelism = threads }, encounter =>
            set.Draw(thermal, random.Stream(encounter), encounter));
        return set;
    }

    private void Draw(Thermal thermal, CounterRandom random, int encounter)
    {
        var beside = (2 * random.Uniform(0)) - 1;
        var miss = thermal.RadiusM * ((Math.Sign(beside) * NearestMiss) + (beside * (FarthestMiss - NearestMiss)));
        var chance = 0.5 + (WingFelt * Math.Min(1, Math.Abs(miss) / (WingFeltFrom * thermal.RadiusM)));
        var right = random.Uniform(1) < chance;
        Miss[encounter] = (float)miss;
        Side[encounter] = (miss > 0) == right ? 1 : -1;
        AgeShare[encounter] = thermal.Lifetime is null ? 0.5f : (float)(0.05 + (0.7 * random.Uniform(2)));
        var average = thermal.Form == ThermalForm.Picked ? thermal.RadiusM / Updrafts.PickedUpdraft.WidthOverAverage : thermal.RadiusM;
        var density = Spacing.UpdraftsPerSquareMetre(thermal.Depth.Metres, average);
        var least = 2 * thermal.RadiusM;
        var distance = Math.Sqrt((least * least) - (Math.Log(1 - random.Uniform(3)) / (Math.PI * density)));
        (NeighbourX[encounter], NeighbourY[encounter]) = Towards(random.Uniform(4), distance);
        NeighbourStrength[encounter] = (float)(0.4 + (0.5 * random.Uniform(5)));
        (ShearX[encounter], ShearY[encounter]) = Towards(random.Uniform(6), 1);
        Dither[encounter] = (float)(random.Uniform(7) - 0.5);
        Lot(random, encounter);
        Unsteady(random.Stream(Lots), encounter, thermal.CoreUpdraft.MetresPerSecond);
    }

    private void Lot(CounterRandom random, int encounter)
    {
        var spread = Turbulence.StrengthSpread;
        Strength[encounter] = (float)Math.Exp((spread * random.Normal(8)) - (0.5 * spread * spread));
        (SpeedLot[encounter], BankLot[encounter], PlaceLot[encounter]) = ((float)random.Normal(9), (float)random.Normal(10), (float)random.Normal(11));
    }

    private void Unsteady(CounterRandom random, int encounter, double coreMs)
    {
        Turbulence.Gusts(Series(Gusts, encounter), Block, random.Stream(0), coreMs);
        Turbulence.Along(Series(Along, encounter), Block, random.Stream(4), coreMs, GustSpeedMs);
        Turbulence.Slow(Series(Breath, encounter), Block, random.Stream(1), Turbulence.BreathingMemoryS, Turbulence.Breathing);
        Turbulence.Slow(Series(AxisX, encounter), Block, random.Stream(2), Turbulence.WanderMemoryS, Turbulence.WanderOverCore * coreMs);
        Turbulence.Slow(Series(AxisY, encounter), Block, random.Stream(3), Turbulence.WanderMemoryS, Turbulence.WanderOverCore * coreMs);
    }

    private static Span<float> Series(float[] all, int encounter) => all.AsSpan(Place(encounter, 0), ((Seconds + 1) * Block) - (encounter % Block));

    private static (float X, float Y) Towards(double turn, double distance) =>
        ((float)(distance * Math.Cos(2 * Math.PI * turn)), (float)(distance * Math.Sin(2 * Math.PI * turn)));
}
