using System.Runtime.CompilerServices;
using DayBrief.Flight.Thermals;
using DayBrief.Numerics.Lanes;

namespace DayBrief.Flight.Centring.Kernel;

/// <summary>The thermal as constants of the kernel, and its properties at each glider's height.</summary>
internal readonly struct Column
{
    public readonly float WStar, Depth, Height, RadiusGain, HalfLayer, Shear, InverseRise, InverseLife;
    public readonly float K1, K2, K3, K4;

    public Column(Thermal thermal)
    {
        WStar = (float)thermal.WStarMs;
        Depth = (float)thermal.ProfileDepthM;
        Height = (float)thermal.Height.Metres;
        RadiusGain = (float)(0.102 * thermal.RadiusGain * thermal.ProfileDepthM);
        HalfLayer = (float)(0.5 * thermal.Depth.Metres);
        Shear = (float)(thermal.WindShearMsPerKm / 1000);
        InverseRise = (float)(1 / LifeCycle.RiseMs(thermal));
        InverseLife = thermal.Lifetime is { } life ? (float)(1 / life.TotalSeconds) : 0;
        var shape = thermal.At(thermal.Height).Shape;
        (K1, K2, K3, K4) = ((float)shape.K1, (float)shape.K2, (float)shape.K3, (float)shape.K4);
    }

    private Column(float depth) => (Depth, RadiusGain, K1, K2) = (depth, 0.1f * depth, 1, 2);

    /// <summary>Air in which nothing moves, for checks of the flying alone.</summary>
    public static Column StillAir { get; } = new(1000);

    /// <summary>Allen's equations 11 to 22 at the height reached; see <see cref="AllenUpdraft"/>, which tests compare.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Renew<T>(ref EncounterState<T> s, float clock)
        where T : struct, ILane<T>
    {
        var x = LaneMath.Clamp((T.Of(Height) + s.Gained) / T.Of(Depth), T.Of(0.02f), T.Of(1));
        var root = LaneMath.Exp2(LaneMath.Log2(x) * T.Of(1 / 3f));
        var mean = T.Of(WStar) * root * (T.Of(1) - (T.Of(1.1f) * x));
        var radius = T.Max(T.Of(10), T.Of(RadiusGain) * root * (T.Of(1) - (T.Of(0.25f) * x)));
        var core = T.Min(T.Of(0.8f), (T.Of(0.0011f) * radius) + T.Of(0.14f));
        s.Centre = mean * T.Of(3) / (T.Of(1) + core + (core * core));
        s.CoreRatio = core;
        s.InverseRadius = T.Of(1) / radius;
        var gradient = T.Of(WStar / Depth) * ((T.Of(1 / 3f) / (root * root)) - (T.Of(4.4f / 3) * root));
        s.Outflow = T.Of(-0.5f) * gradient;
        RenewSink(ref s, x, mean, radius);
        RenewLean(ref s);
        var age = s.AgeShare + ((T.Of(clock) - (s.Gained * T.Of(InverseRise))) * T.Of(InverseLife));
        s.Strength = LaneMath.Clamp(T.Min(age, T.Of(1) - age) * T.Of((float)(1 / LifeCycle.RampShare)), T.Of(0), T.Of(1));
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
        var q = T.Sqrt(T.Min(here, there)) * s.InverseRadius;
        var u = T.Max(T.Abs(q + T.Of(K3)) * T.Of(K1), T.Of(1e-6f));
        var p = LaneMath.Exp2(LaneMath.Log2(u) * T.Of(K2));
        var shape = T.Max(T.Of(0), (T.Of(1) / (T.Of(1) + p)) + (T.Of(K4) * q));
        // −sin(πq) between one and two radii, zero elsewhere
        var angle = T.Min(T.Abs(q - T.Of(1.5f)), T.Of(0.5f)) * T.Of(MathF.PI);
        var updraft = strength * ((shape * s.Centre) - (T.Max(T.Of(0), LaneMath.Cos(angle)) * s.Ring));
        return T.Select(q > s.CoreRatio, (updraft * s.Blend) + s.Sink, updraft);
    }
}
