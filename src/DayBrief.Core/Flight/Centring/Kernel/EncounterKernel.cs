using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using DayBrief.Numerics.Lanes;

namespace DayBrief.Flight.Centring.Kernel;

/// <summary>Flies encounters through their five minutes: one at a time, or several side by side.</summary>
/// <remarks>Both forms are one source (see <see cref="ILane{T}"/>) and give the same bits.</remarks>
internal static class EncounterKernel
{
    private const int ThreeMinutes = 180;

    /// <summary>Time outside the updraft after which a thermal counts as lost, s: longer than any circle takes.</summary>
    private const float LostAfter = 30;

    /// <summary>The reference: one encounter after the other.</summary>
    public static void Fly(EncounterSet set, in Column column, Flying flying, Clock clock, Outcomes outcomes, int from, int to) =>
        Run<Lane1>(set, in column, flying, clock, outcomes, from, to);

    /// <summary>The same, as many side by side as the processor takes: sixteen or eight.</summary>
    public static void FlyWide(EncounterSet set, in Column column, Flying flying, Clock clock, Outcomes outcomes, int from, int to)
    {
        if (Vector512.IsHardwareAccelerated)
            Run<Lane16>(set, in column, flying, clock, outcomes, from, to);
        else
            Run<Lane8>(set, in column, flying, clock, outcomes, from, to);
    }

    /// <summary>How long to fly, 180 s or more, and in how many steps a second.</summary>
    public readonly record struct Clock(int Seconds, int StepsPerSecond);

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void Run<T>(EncounterSet set, in Column column, Flying flying, Clock clock, Outcomes outcomes, int from, int to)
        where T : struct, ILane<T>
    {
        var tempo = new Tempo(flying, clock.StepsPerSecond);
        for (var first = from; first < to; first += T.Count)
        {
            Begin(out EncounterState<T> state, set, flying, first);
            for (var second = 0; second < clock.Seconds; second++)
            {
                Renew(ref state, set, in column, flying, first, second);
                outcomes.Trace?.Keep(ref state, second, first);
                Second(ref state, in column, flying, in tempo, second, clock.StepsPerSecond);
                if (second == ThreeMinutes - 1)
                    (state.GainedThree, state.LostThree) = (state.Gained, T.Of(second - LostAfter) > state.LastInside);
            }

            outcomes.Trace?.Keep(ref state, clock.Seconds, first);
            outcomes.Keep(ref state, first);
        }
    }

    /// <summary>Straight flight towards the thermal, on speed or too fast, thinking of nothing.</summary>
    public static void Begin<T>(out EncounterState<T> s, EncounterSet set, Flying f, int first)
        where T : struct, ILane<T>
    {
        s = default;
        s.X = T.Load(set.Miss.AsSpan(first));
        s.Y = T.Of(set.StartY);
        s.HeadingY = T.Of(1);
        s.SpeedAim = T.Of(f.Speed) + (T.Load(set.SpeedLot.AsSpan(first)) * T.Of(f.SpeedScatter));
        s.BankAim = T.Of(f.Bank) + (T.Load(set.BankLot.AsSpan(first)) * T.Of(f.BankScatter));
        s.Misjudged = T.Load(set.PlaceLot.AsSpan(first)) * T.Of(f.PlaceScatter);
        s.Speed = s.SpeedAim + T.Of(f.EntryExcess);
        s.Lot = T.Load(set.Strength.AsSpan(first));
        s.Side = T.Load(set.Side.AsSpan(first));
        s.AgeShare = T.Load(set.AgeShare.AsSpan(first));
        s.NeighbourX = T.Load(set.NeighbourX.AsSpan(first));
        s.NeighbourY = T.Load(set.NeighbourY.AsSpan(first));
        s.NeighbourStrength = T.Load(set.NeighbourStrength.AsSpan(first));
        s.ShearX = T.Load(set.ShearX.AsSpan(first));
        s.ShearY = T.Load(set.ShearY.AsSpan(first));
        s.Dither = T.Load(set.Dither.AsSpan(first));
        s.Reading = T.Of(-1);
        s.EntryBest = T.Of(-Pilot.Nothing);
        s.LaterBest = T.Of(-Pilot.Nothing);
        s.Best = T.Of(-Pilot.Nothing);
        s.Worst = T.Of(Pilot.Nothing);
        s.Pending = T.Of(Pilot.Nothing);
        s.CentredSince = T.Of(-1);
        s.CentredAt = T.Of(-1);
        s.FirstOffset = T.Of(-1);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void Second<T>(ref EncounterState<T> s, in Column column, Flying f, in Tempo tempo, int second, int stepsPerSecond)
        where T : struct, ILane<T>
    {
        for (var part = 0; part < stepsPerSecond; part++)
        {
            Glide.Step(ref s, in column, f, in tempo, (part + 0.5f) * tempo.Step);
            Pilot.Decide(ref s, f, in tempo, second + ((part + 1) * tempo.Step));
        }
    }

    /// <summary>What need not be renewed every step: the thermal at the new height, the next gust, and the score.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void Renew<T>(ref EncounterState<T> s, EncounterSet set, in Column column, Flying f, int first, int second)
        where T : struct, ILane<T>
    {
        column.Renew(ref s, second);
        s.Gust = T.Load(set.Gusts.AsSpan(EncounterSet.Place(first, second)));
        s.GustPerSecond = T.Load(set.Gusts.AsSpan(EncounterSet.Place(first, second + 1))) - s.Gust;
        s.Along = T.Load(set.Along.AsSpan(EncounterSet.Place(first, second)));
        s.AlongPerSecond = T.Load(set.Along.AsSpan(EncounterSet.Place(first, second + 1))) - s.Along;
        s.Strength = s.Life * s.Lot * (T.Of(1) + T.Load(set.Breath.AsSpan(EncounterSet.Place(first, second))));
        s.DriftX -= T.Load(set.AxisX.AsSpan(EncounterSet.Place(first, second)));
        s.DriftY -= T.Load(set.AxisY.AsSpan(EncounterSet.Place(first, second)));
        // the slow series backwards: a wave of unit size with nothing in common with the air of the moment
        if (f.BankWander > 0)
        {
            var wave = T.Load(set.AxisX.AsSpan(EncounterSet.Place(first, EncounterSet.Seconds - second))) * T.Of(f.BankWander * set.WaveScale);
            s.Wander = T.Select(s.Phase > T.Of(Pilot.Circling - 0.5f), wave, T.Of(0));
        }

        Score(ref s, f, second);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Score<T>(ref EncounterState<T> s, Flying f, int second)
        where T : struct, ILane<T>
    {
        var distance = T.Sqrt((s.X * s.X) + (s.Y * s.Y)) * s.InverseRadius;
        var (nx, ny) = (s.X - s.NeighbourX, s.Y - s.NeighbourY);
        var neighbour = T.Sqrt((nx * nx) + (ny * ny)) * s.InverseRadius;
        var alive = s.Life > T.Of(0);
        var inside = ((distance < T.Of(1)) & alive) | (neighbour < T.Of(1));
        s.LastInside = T.Select(inside, T.Of(second), s.LastInside);
        var steep = T.Abs(s.Bank) > T.Of(0.25f);
        var radius = s.Speed * s.Speed * LaneMath.Cos(s.Bank) / (T.Of(9.80665f) * LaneMath.Sin(s.Bank));
        var (cx, cy) = (s.X - (s.HeadingY * radius), s.Y + (s.HeadingX * radius));
        var offset = T.Sqrt((cx * cx) + (cy * cy)) * s.InverseRadius;
        var centred = steep & (offset < T.Of(f.CentredShare)) & (s.Phase > T.Of(Pilot.Circling - 0.5f));
        s.CentredSince = T.Select(centred, T.Select(s.CentredSince < T.Of(0), s.Turned, s.CentredSince), T.Of(-1));
        var lasting = centred & (s.CentredAt < T.Of(0)) & (s.Turned > s.CentredSince + T.Of(2 * MathF.PI));
        s.CentredAt = T.Select(lasting, s.CentredSince * T.Of(1 / (2 * MathF.PI)), s.CentredAt);
        var half = steep & (s.FirstOffset < T.Of(0)) & (s.Turned > T.Of(MathF.PI));
        s.FirstOffset = T.Select(half, offset, s.FirstOffset);
    }
}
