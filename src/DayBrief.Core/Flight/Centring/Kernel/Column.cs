using System.Runtime.CompilerServices;
using DayBrief.Flight.Thermals;
using DayBrief.Numerics.Lanes;
using DayBrief.Updrafts;

namespace DayBrief.Flight.Centring.Kernel;

/// <summary>The thermal as constants of the kernel, and its properties at each glider's height.</summary>
internal readonly struct Column
{
    public readonly bool Picked;
    public readonly float WStar, Depth, Top, Carried, Height, Radius, HalfLayer, Shear, InverseRise, InverseLife, Surroundings;
    public readonly float K1, K2, K3, K4;

    public Column(Thermal thermal)
    {
        Picked = thermal.Form == ThermalForm.Picked;
        WStar = (float)(Picked ? thermal.SteadyCoreMs : thermal.WStarMs);
        (Depth, Top) = ((float)(Picked ? thermal.Depth.Metres : thermal.TopM), (float)thermal.TopM);
        Carried = (float)thermal.Carried;
        Height = (float)thermal.Height.Metres;
        Radius = (float)(Picked
            ? thermal.QuotedRadiusM * 0.102 / PickedUpdraft.AverageRadius(PickedUpdraft.QuotedAt)
            : 0.102 * thermal.RadiusGain * thermal.TopM);
        Surroundings = (float)thermal.SinkMs;
        HalfLayer = (float)(0.5 * thermal.Depth.Metres);
        Shear = (float)(thermal.WindShearMsPerKm / 1000);
        InverseRise = (float)(1 / LifeCycle.RiseMs(thermal));
        InverseLife = thermal.Lifetime is { } life ? (float)(1 / life.TotalSeconds) : 0;
        if (thermal.At(thermal.Height).Average is { Shape: var shape })
            (K1, K2, K3, K4) = ((float)shape.K1, (float)shape.K2, (float)shape.K3, (float)shape.K4);
    }

    private Column(float depth) => (Picked, Depth, Top, Radius) = (true, depth, depth, 0.1f * depth);

    /// <summary>Air in which nothing moves, for checks of the flying alone.</summary>
    public static Column StillAir { get; } = new(1000);

    /// <summary>The thermal at the height reached; see <see cref="Thermal.At"/>, which tests compare.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Renew<T>(ref EncounterState<T> s, float clock)
        where T : struct, ILane<T>
    {
        var height = T.Of(Height) + s.Gained;
        var x = LaneMath.Clamp(height / T.Of(Depth), T.Of(0.02f), T.Of(Picked ? Math.Max(1, Top / Depth) : 1));
        var inLayer = T.Min(x, T.Of(1));
        var root = LaneMath.Exp2(LaneMath.Log2(inLayer) * T.Of(1 / 3f));
        var radius = T.Max(T.Of(10), T.Of(Radius) * root * (T.Of(1) - (T.Of(0.25f) * inLayer)));
        s.InverseRadius = T.Of(1) / radius;
        if (Picked)
            RenewPicked(ref s, x);
        else
            RenewAverage(ref s, x, root, radius);
        RenewLean(ref s);
        var age = s.AgeShare + ((T.Of(clock) - (s.Gained * T.Of(InverseRise))) * T.Of(InverseLife));
        s.Life = LaneMath.Clamp(T.Min(age, T.Of(1) - age) * T.Of((float)(1 / LifeCycle.RampShare)), T.Of(0), T.Of(1));
    }

    /// <summary><see cref="PickedUpdraft"/>: growth near the ground, steady, and the end; with the flow that continuity asks for.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void RenewPicked<T>(ref EncounterState<T> s, T x)
        where T : struct, ILane<T>
    {
        var one = T.Of(1);
        var low = T.Of((float)PickedUpdraft.GrownAt) / x;
        var cube = low * low * low;
        var up = T.Min(one, x * T.Of(Depth / Top));
        var second = up * up;
        var ninth = second * second * second * second * up;
        var gone = T.Of(1 - Carried) * ninth;
        var grown = T.Of(WStar) * LaneMath.Exp2(LaneMath.Log2(one + cube) * T.Of(-1 / 9f));
        var left = T.Max(T.Of(0), one - (gone * up));
        s.Centre = grown * left;
        var gradient = (grown * left * cube / (T.Of(3 * Depth) * x * (one + cube))) - (grown * gone * T.Of(10 / Top));
        s.Outflow = T.Of(-0.25f) * gradient;
        s.Sink = T.Of(Surroundings);
    }

    /// <summary>Allen's equations 11 to 22.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void RenewAverage<T>(ref EncounterState<T> s, T x, T root, T radius)
        where T : struct, ILane<T>
    {
        var mean = T.Of(WStar) * root * (T.Of(1) - (T.Of(1.1f) * x));
        var core = T.Min(T.Of(0.8f), (T.Of(0.0011f) * radius) + T.Of(0.14f));
        s.Centre = mean * T.Of(3) / (T.Of(1) + core + (core * core));
        s.CoreRatio = core;
        var gradient = T.Of(WStar / Depth) * ((T.Of(1 / 3f) / (root * root)) - (T.Of(4.4f / 3) * root));
        s.Outflow = T.Of(-0.5f) * gradient;
        RenewSink(ref s, x, mean, radius);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void RenewSink<T>(ref EncounterState<T> s, T x, T mean, T radius)
        where T : struct, ILane<T>
    {
        var inRing = (x > T.Of(0.5f)) & (x < T.Of(0.9f));
        var ring = T.Select(inRing, T.Of(2.5f) * (x - T.Of(0.5f)), T.Of(0));
        var covered = T.Min(T.Of(0.5f), radius * T.Of(0.6f * MathF.PI / Depth));
        var sink = T.Min(T.Of(0), T.Of(0) - (covered * mean * (T.Of(1) - ring) / (T.Of(1) - covered)));
        var rises = s.Centre > T.Of(0);
        s.Sink = T.Select(rises, sink, T.Of(0));
        s.Blend = T.Select(rises, T.Of(1) - (sink / s.Centre), T.Of(1));
        s.Ring = ring * mean * T.Of(MathF.PI / 6);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void RenewLean<T>(ref EncounterState<T> s)
        where T : struct, ILane<T>
    {
        var relative = T.Of(Shear) * (T.Of(Height - HalfLayer) + s.Gained);
        var steepest = T.Of((float)Lean.SteepestSlope);
        var slope = LaneMath.Clamp(relative / T.Max(s.Centre, T.Of(0.1f)), T.Of(0) - steepest, steepest);
        (s.DriftX, s.DriftY) = (relative * s.ShearX, relative * s.ShearY);
        (s.LeanX, s.LeanY) = (slope * s.ShearX, slope * s.ShearY);
    }

    /// <summary>Vertical speed of the air at the glider: the nearest of the thermal and its neighbour governs, as in Allen's program.</summary>
    /// <param name="s">The encounters.</param>
    /// <param name="x">Place of the gliders, m.</param>
    /// <param name="y">Place of the gliders, m.</param>
    /// <param name="here">Their distance from the axis, squared.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T Updraft<T>(ref EncounterState<T> s, T x, T y, T here)
        where T : struct, ILane<T>
    {
        var (dx, dy) = (x - s.NeighbourX, y - s.NeighbourY);
        var there = (dx * dx) + (dy * dy);
        var strength = T.Select(there < here, s.NeighbourStrength, s.Strength);
        var near = T.Min(here, there);
        if (Picked)
            return T.Max(s.Sink, strength * s.Centre * (T.Of(1) - (near * s.InverseRadius * s.InverseRadius)));
        return Average(ref s, strength, T.Sqrt(near) * s.InverseRadius);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private T Average<T>(ref EncounterState<T> s, T strength, T q)
        where T : struct, ILane<T>
    {
        var u = T.Max(T.Abs(q + T.Of(K3)) * T.Of(K1), T.Of(1e-6f));
        var p = LaneMath.Exp2(LaneMath.Log2(u) * T.Of(K2));
        var shape = T.Max(T.Of(0), (T.Of(1) / (T.Of(1) + p)) + (T.Of(K4) * q));
        // −sin(πq) between one and two radii, zero elsewhere
        var angle = T.Min(T.Abs(q - T.Of(1.5f)), T.Of(0.5f)) * T.Of(MathF.PI);
        var updraft = strength * ((shape * s.Centre) - (T.Max(T.Of(0), LaneMath.Cos(angle)) * s.Ring));
        var outside = LaneMath.Clamp((q - s.CoreRatio) * T.Of((float)(1 / AllenUpdraft.MixedOver)), T.Of(0), T.Of(1));
        return updraft + (outside * (s.Sink + (updraft * (s.Blend - T.Of(1)))));
    }
}
