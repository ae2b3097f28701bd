using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace DayBrief.Numerics.Lanes;

/// <summary>Sixteen numbers side by side in one Vector512.</summary>
internal readonly struct Lane16 : ILane<Lane16>
{
    private readonly Vector512<float> _value;

    private Lane16(Vector512<float> value) => _value = value;

    public static int Count => Vector512<float>.Count;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane16 Of(float value) => new(Vector512.Create(value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane16 Load(ReadOnlySpan<float> from) => new(Vector512.LoadUnsafe(ref MemoryMarshal.GetReference(from[..Count])));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Store(Lane16 value, Span<float> to) => value._value.StoreUnsafe(ref MemoryMarshal.GetReference(to[..Count]));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane16 operator +(Lane16 left, Lane16 right) => new(left._value + right._value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane16 operator -(Lane16 left, Lane16 right) => new(left._value - right._value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane16 operator *(Lane16 left, Lane16 right) => new(left._value * right._value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane16 operator /(Lane16 left, Lane16 right) => new(left._value / right._value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane16 operator &(Lane16 left, Lane16 right) => new(left._value & right._value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane16 operator |(Lane16 left, Lane16 right) => new(left._value | right._value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane16 operator <(Lane16 left, Lane16 right) => new(Vector512.LessThan(left._value, right._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane16 operator >(Lane16 left, Lane16 right) => new(Vector512.GreaterThan(left._value, right._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane16 Equal(Lane16 left, Lane16 right) => new(Vector512.Equals(left._value, right._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane16 Min(Lane16 left, Lane16 right) => new(Vector512.MinNative(left._value, right._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane16 Max(Lane16 left, Lane16 right) => new(Vector512.MaxNative(left._value, right._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane16 Abs(Lane16 value) => new(Vector512.Abs(value._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane16 Sqrt(Lane16 value) => new(Vector512.Sqrt(value._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane16 Floor(Lane16 value) => new(Vector512.Floor(value._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane16 Select(Lane16 mask, Lane16 set, Lane16 unset) => new(Vector512.ConditionalSelect(mask._value, set._value, unset._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool Any(Lane16 mask) => mask._value.AsInt32() != Vector512<int>.Zero;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane16 PowerOfTwo(Lane16 integer) =>
        new(((Vector512.ConvertToInt32Native(integer._value) + Vector512.Create(127)) << 23).AsSingle());

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane16 Exponent(Lane16 value) =>
        new(Vector512.ConvertToSingle((value._value.AsInt32() >>> 23) - Vector512.Create(127)));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane16 Mantissa(Lane16 value) =>
        new(((value._value.AsInt32() & Vector512.Create(0x7FFFFF)) | Vector512.Create(0x3F800000)).AsSingle());
}
