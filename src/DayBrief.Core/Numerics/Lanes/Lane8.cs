using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace DayBrief.Numerics.Lanes;

/// <summary>Eight numbers side by side in one Vector256.</summary>
internal readonly struct Lane8 : ILane<Lane8>
{
    private readonly Vector256<float> _value;

    private Lane8(Vector256<float> value) => _value = value;

    public static int Count => Vector256<float>.Count;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Of(float value) => new(Vector256.Create(value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Load(ReadOnlySpan<float> from) => new(Vector256.LoadUnsafe(ref MemoryMarshal.GetReference(from[..Count])));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Store(Lane8 value, Span<float> to) => value._value.StoreUnsafe(ref MemoryMarshal.GetReference(to[..Count]));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 operator +(Lane8 left, Lane8 right) => new(left._value + right._value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 operator -(Lane8 left, Lane8 right) => new(left._value - right._value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 operator *(Lane8 left, Lane8 right) => new(left._value * right._value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 operator /(Lane8 left, Lane8 right) => new(left._value / right._value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 operator &(Lane8 left, Lane8 right) => new(left._value & right._value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 operator |(Lane8 left, Lane8 right) => new(left._value | right._value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 operator <(Lane8 left, Lane8 right) => new(Vector256.LessThan(left._value, right._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 operator >(Lane8 left, Lane8 right) => new(Vector256.GreaterThan(left._value, right._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Equal(Lane8 left, Lane8 right) => new(Vector256.Equals(left._value, right._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Min(Lane8 left, Lane8 right) => new(Vector256.MinNative(left._value, right._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Max(Lane8 left, Lane8 right) => new(Vector256.MaxNative(left._value, right._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Abs(Lane8 value) => new(Vector256.Abs(value._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Sqrt(Lane8 value) => new(Vector256.Sqrt(value._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Floor(Lane8 value) => new(Vector256.Floor(value._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Select(Lane8 mask, Lane8 set, Lane8 unset) => new(Vector256.ConditionalSelect(mask._value, set._value, unset._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool Any(Lane8 mask) => mask._value.AsInt32() != Vector256<int>.Zero;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 PowerOfTwo(Lane8 integer) =>
        new(((Vector256.ConvertToInt32Native(integer._value) + Vector256.Create(127)) << 23).AsSingle());

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Exponent(Lane8 value) =>
        new(Vector256.ConvertToSingle((value._value.AsInt32() >>> 23) - Vector256.Create(127)));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Mantissa(Lane8 value) =>
        new(((value._value.AsInt32() & Vector256.Create(0x7FFFFF)) | Vector256.Create(0x3F800000)).AsSingle());
}
