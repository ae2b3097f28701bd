using System.Runtime.CompilerServices;
using DayBrief.Numerics.Lanes;

namespace DayBrief.Flight.Centring.Kernel;

/// <summary>What the pilot does with what the instrument shows: entry, watching one turn, one correction, watching again.</summary>
internal static class Pilot
{
    public const float Approaching = 0;
    public const float Surging = 1;
    public const float Circling = 2;
    public const float Level = 3;
    public const float Tight = 4;
    public const float Easing = 5;

    /// <summary>No correction is waiting for its place in the turn.</summary>
    public const float Nothing = 1e9f;

    /// <summary>Turn flown before a new circle's readings count: the roll-in and the lag must have passed.</summary>
    private const float Settle = MathF.PI / 4;

    /// <summary>Fall of what is felt, over the core, that is more than a gust: the lift has stopped rising.</summary>
    private const float Fallen = 0.05f;

    /// <summary>Time after the surge for which a pilot waits for the lift to stop rising, s.</summary>
    private const float LongestSearch = 10;

    /// <summary>What follows from the state at a step's end, <paramref name="clock"/>, for the next step.</summary>
    /// <remarks>Events are dated half a step back, due times met half a step early and spread over a step, so that on average
    /// nothing is late at any step.</remarks>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void Decide<T>(ref EncounterState<T> s, Flying f, in Tempo tempo, float clock)
        where T : struct, ILane<T>
    {
        Enter(ref s, f, in tempo, clock);
        if (f.FirstTurn != FirstTurn.Kept)
            JudgeFirstTurn(ref s, f, in tempo, clock);
        if (f.Corrects)
        {
            Watch(ref s, f);
            Act(ref s, f, in tempo, clock);
        }

        if (f.TightenFrom < Flying.NoSwing)
            Ease(ref s, f, in tempo);
        if (f.Corrects || f.FirstTurn == FirstTurn.LevelledAfter270)
            Resume(ref s, f, Is(s.Phase, Level) & (T.Of(clock + (0.5f * tempo.Step)) > s.UntilClock));
    }

    /// <summary>From straight flight into the first turn: some seconds after the surge, or when the lift has stopped rising.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Enter<T>(ref EncounterState<T> s, Flying f, in Tempo tempo, float clock)
        where T : struct, ILane<T>
    {
        var straight = s.Phase < T.Of(Circling);
        if (!T.Any(straight))
            return;

        var now = T.Of(clock - (0.5f * tempo.Step) + f.EntryDelay) + (s.Dither * T.Of(tempo.Step));
        s.EntryBest = T.Select(straight, T.Max(s.EntryBest, s.Reading), s.EntryBest);
        var surge = Is(s.Phase, Approaching) & (s.Felt > T.Of(f.SurgeMs));
        s.Phase = T.Select(surge, T.Of(Surging), s.Phase);
        s.UntilClock = T.Select(surge, now + T.Of(f.TurnOnSurge ? 0 : LongestSearch), s.UntilClock);
        if (!f.TurnOnSurge)
        {
            s.Slow += (s.Felt - s.Slow) * T.Of(tempo.SlowShare);
            s.SlowBest = T.Max(s.SlowBest, s.Slow);
            var falls = Is(s.Phase, Surging) & (s.Slow < s.SlowBest - T.Of(Fallen * f.CoreMs));
            s.UntilClock = T.Select(falls, T.Min(s.UntilClock, now), s.UntilClock);
        }

        var turn = Is(s.Phase, Surging) & (T.Of(clock + (0.5f * tempo.Step)) > s.UntilClock);
        s.Phase = T.Select(turn, T.Of(Circling), s.Phase);
        s.BankWanted = T.Select(turn, s.Side * s.BankAim, s.BankWanted);
        s.WindowStart = T.Select(turn, s.Turned + T.Of(Settle), s.WindowStart);
    }

    /// <summary>The two answers to a first turn that found less than the entry: level after 270°, or turn the other way.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void JudgeFirstTurn<T>(ref EncounterState<T> s, Flying f, in Tempo tempo, float clock)
        where T : struct, ILane<T>
    {
        var open = Is(s.Phase, Circling) & (s.FirstTurnJudged < T.Of(0.5f));
        var drop = s.EntryBest - T.Of(0.3f * f.CoreMs);
        var due = open & (Due(ref s, in tempo) > T.Of(f.JudgeAt));
        s.FirstTurnJudged = T.Select(due, T.Of(1), s.FirstTurnJudged);
        if (f.FirstTurn == FirstTurn.Reversed)
        {
            var wrong = due & (s.Reading < drop);
            s.Side = T.Select(wrong, T.Of(0) - s.Side, s.Side);
            s.BankWanted = T.Select(wrong, s.Side * s.BankAim, s.BankWanted);
            return;
        }

        var seen = open & (s.Turned > T.Of(MathF.PI / 2));
        s.LaterBest = T.Select(seen, T.Max(s.LaterBest, s.Reading), s.LaterBest);
        var missed = due & (s.LaterBest < drop);
        s.Phase = T.Select(missed, T.Of(Level), s.Phase);
        s.BankWanted = T.Select(missed, T.Of(0), s.BankWanted);
        s.UntilClock = T.Select(missed, T.Of(clock + (f.Bank / f.RollRate) + f.LevelS) + (s.Dither * T.Of(tempo.Step)), s.UntilClock);
    }

    /// <summary>Notes the strongest and weakest reading and where; after a full turn decides which correction comes and where.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Watch<T>(ref EncounterState<T> s, Flying f)
        where T : struct, ILane<T>
    {
        var circling = Is(s.Phase, Circling) & (s.Pending > T.Of(Nothing / 2));
        var counts = circling & (s.Turned > s.WindowStart);
        var better = counts & (s.Reading > s.Best);
        var worse = counts & (s.Reading < s.Worst);
        (s.Best, s.BestAt) = (T.Select(better, s.Reading, s.Best), T.Select(better, s.Turned, s.BestAt));
        (s.Worst, s.WorstAt) = (T.Select(worse, s.Reading, s.Worst), T.Select(worse, s.Turned, s.WorstAt));
        var done = counts & (s.Turned > s.WindowStart + T.Of(f.Observe));
        if (T.Any(done))
            Choose(ref s, f, done);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Choose<T>(ref EncounterState<T> s, Flying f, T done)
        where T : struct, ILane<T>
    {
        var swing = s.Best - s.Worst;
        var shift = done & (swing > T.Of(f.ShiftFrom));
        var tighten = T.Select(shift, T.Of(0), done & (swing > T.Of(f.TightenFrom)));
        var at = T.Select(shift, s.WorstAt + T.Of(f.AfterWorst), s.BestAt + T.Of(f.AfterBest)) + s.Misjudged;
        at = T.Select(at < s.Turned, at + T.Of(2 * MathF.PI), at);
        s.Pending = T.Select(shift | tighten, at, s.Pending);
        s.PendingIsShift = T.Select(done, shift & T.Of(1), s.PendingIsShift);
        var level = T.Of(f.LevelS);
        foreach (var hinge in f.LevelBySwing.Span)
            level += T.Max(T.Of(0), swing - T.Of(hinge.From)) * T.Of(hinge.Slope);
        s.LevelFor = T.Select(shift, LaneMath.Clamp(level, T.Of(0), T.Of(12)), s.LevelFor);
        Forget(ref s, done, s.Turned);
    }

    /// <summary>Begins the waiting correction where it belongs.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Act<T>(ref EncounterState<T> s, Flying f, in Tempo tempo, float clock)
        where T : struct, ILane<T>
    {
        var act = Is(s.Phase, Circling) & (Due(ref s, in tempo) > s.Pending);
        if (!T.Any(act))
            return;

        var shift = act & (s.PendingIsShift > T.Of(0.5f));
        s.Phase = T.Select(act, T.Select(shift, T.Of(Level), T.Of(Tight)), s.Phase);
        s.BankWanted = T.Select(act, T.Select(shift, T.Of(0), s.Side * (s.BankAim + T.Of(f.Tighten))), s.BankWanted);
        s.UntilClock = T.Select(shift, T.Of(clock + (f.Bank / f.RollRate)) + s.LevelFor + (s.Dither * T.Of(tempo.Step)), s.UntilClock);
        s.UntilTurned = T.Select(act, s.Turned + T.Of(f.HoldTight), s.UntilTurned);
        s.Pending = T.Select(act, T.Of(Nothing), s.Pending);
    }

    /// <summary>Holds the tighter bank for its time and lets it out over the next half turn.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Ease<T>(ref EncounterState<T> s, Flying f, in Tempo tempo)
        where T : struct, ILane<T>
    {
        var tight = Is(s.Phase, Tight) & (Due(ref s, in tempo) > s.UntilTurned);
        s.Phase = T.Select(tight, T.Of(Easing), s.Phase);
        s.UntilTurned = T.Select(tight, s.Turned + T.Of(MathF.PI), s.UntilTurned);
        var easing = Is(s.Phase, Easing);
        var left = T.Max(T.Of(0), s.UntilTurned - s.Turned) * T.Of(f.Tighten / MathF.PI);
        s.BankWanted = T.Select(easing, s.Side * (s.BankAim + left), s.BankWanted);
        Resume(ref s, f, easing & (s.Turned > s.UntilTurned));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Resume<T>(ref EncounterState<T> s, Flying f, T ends)
        where T : struct, ILane<T>
    {
        s.Phase = T.Select(ends, T.Of(Circling), s.Phase);
        s.BankWanted = T.Select(ends, s.Side * s.BankAim, s.BankWanted);
        Forget(ref s, ends, s.Turned + T.Of(Settle));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Forget<T>(ref EncounterState<T> s, T where, T from)
        where T : struct, ILane<T>
    {
        s.WindowStart = T.Select(where, from, s.WindowStart);
        s.Best = T.Select(where, T.Of(-Nothing), s.Best);
        s.Worst = T.Select(where, T.Of(Nothing), s.Worst);
    }

    /// <summary>The angle turned against which due angles are met: half a step early, spread over a step.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T Due<T>(ref EncounterState<T> s, in Tempo tempo)
        where T : struct, ILane<T> => s.Turned + T.Of(tempo.HalfTurn) + (s.Dither * T.Of(2 * tempo.HalfTurn));

    private static T Is<T>(T phase, float which)
        where T : struct, ILane<T> => T.Equal(phase, T.Of(which));
}
