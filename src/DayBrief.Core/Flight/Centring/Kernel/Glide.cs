using System.Runtime.CompilerServices;
using DayBrief.Numerics.Lanes;

namespace DayBrief.Flight.Centring.Kernel;

/// <summary>One time step of the gliders and of what their instruments show, second order in the step.</summary>
internal static class Glide
{
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void Step<T>(ref EncounterState<T> s, in Column column, Flying f, in Tempo tempo, float sinceSecond)
        where T : struct, ILane<T>
    {
        var half = T.Of(0.5f);
        var before = s.Bank;
        var roll = T.Of(tempo.Roll);
        s.Bank += LaneMath.Clamp(s.BankWanted + s.Wander - s.Bank, T.Of(0) - roll, roll);
        var bank = (before + s.Bank) * half;
        var (sine, cosine) = (LaneMath.Sin(bank), LaneMath.Cos(bank));

        // where the glider is in the middle of the step, and one division for three reciprocals
        var reach = s.Speed * T.Of(tempo.HalfStep);
        var (x, y) = (s.X + (s.HeadingX * reach), s.Y + (s.HeadingY * reach));
        var here = (x * x) + (y * y);
        var spread = T.Max(T.Of(1), here * s.InverseRadius * s.InverseRadius);
        var path = cosine * s.Speed;
        var reciprocal = T.Of(1) / (path * spread);
        var load = reciprocal * s.Speed * spread;

        var change = ChangeSpeed(ref s, f, in tempo, T.Sqrt(load), out var sink);
        var air = column.Updraft(ref s, x, y, here) + s.Gust + (s.GustPerSecond * T.Of(sinceSecond));
        var climb = air - sink + s.Along + (s.AlongPerSecond * T.Of(sinceSecond));
        s.Gained += climb * T.Of(tempo.Step);
        var shown = climb - (T.Of(tempo.Uncompensated) * s.Speed * change);
        s.Reading += (shown - s.Reading) * T.Of(tempo.ReadingShare);
        s.Felt += (air - s.Felt) * T.Of(tempo.FeltShare);
        var outflow = s.Outflow * reciprocal * path;
        Move(ref s, T.Of(tempo.TurnShare) * sine * reciprocal * spread, s.DriftX - (s.LeanX * (air - sink)) + (outflow * x), s.DriftY - (s.LeanY * (air - sink)) + (outflow * y), change, tempo.Step);
    }

    /// <summary>The circle's speed, faster when tighter for the same margin above the stall; and the sink at the step's middle.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T ChangeSpeed<T>(ref EncounterState<T> s, Flying f, in Tempo tempo, T root, out T sink)
        where T : struct, ILane<T>
    {
        var wanted = s.SpeedAim * T.Max(T.Of(1), root * T.Of(tempo.RootBank));
        var limit = T.Of(tempo.Speeding);
        var change = LaneMath.Clamp((wanted - s.Speed) * T.Of(tempo.SpeedShare), T.Of(0) - limit, limit);
        var speed = s.Speed + (change * T.Of(0.5f));
        sink = root * ((((T.Of(f.PolarA) * speed) + (T.Of(f.PolarB) * root)) * speed) + (T.Of(f.PolarC) * root * root));
        s.Speed += change;
        return change;
    }

    /// <summary>Half of the step's turn, the way, the other half: so the circle closes.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Move<T>(ref EncounterState<T> s, T half, T carriedX, T carriedY, T change, float step)
        where T : struct, ILane<T>
    {
        var q = half * half;
        var cosine = T.Of(1) - (q * (T.Of(0.5f) - (q * T.Of(1 / 24f))));
        var sine = half * (T.Of(1) - (q * (T.Of(1 / 6f) - (q * T.Of(1 / 120f)))));
        var (hx, hy) = ((s.HeadingX * cosine) - (s.HeadingY * sine), (s.HeadingY * cosine) + (s.HeadingX * sine));
        var speed = s.Speed - (change * T.Of(0.5f));
        s.X += ((hx * speed) + carriedX) * T.Of(step);
        s.Y += ((hy * speed) + carriedY) * T.Of(step);
        (s.HeadingX, s.HeadingY) = ((hx * cosine) - (hy * sine), (hy * cosine) + (hx * sine));
        s.Turned += T.Of(2) * T.Abs(half);
    }
}
