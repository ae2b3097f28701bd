using System.Runtime.CompilerServices;

namespace DayBrief.Numerics.Lanes;

/// <summary>The scalar: one number, masks as its bits.</summary>
internal readonly struct Lane1(float value) : ILane<Lane1>
{
    private readonly float _value = value;

    public static int Count => 1;

    public float Value => _value;

    private int Bits => BitConverter.SingleToInt32Bits(_value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 Of(float value) => new(value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 Load(ReadOnlySpan<float> from) => new(from[0]);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Store(Lane1 value, Span<float> to) => to[0] = value._value;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 operator +(Lane1 left, Lane1 right) => new(left._value + right._value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 operator -(Lane1 left, Lane1 right) => new(left._value - right._value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 operator *(Lane1 left, Lane1 right) => new(left._value * right._value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 operator /(Lane1 left, Lane1 right) => new(left._value / right._value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 operator &(Lane1 left, Lane1 right) => FromBits(left.Bits & right.Bits);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 operator |(Lane1 left, Lane1 right) => FromBits(left.Bits | right.Bits);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 operator <(Lane1 left, Lane1 right) => Mask(left._value < right._value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 operator >(Lane1 left, Lane1 right) => Mask(left._value > right._value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 Equal(Lane1 left, Lane1 right) => Mask(left._value == right._value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 Min(Lane1 left, Lane1 right) => left._value < right._value ? left : right;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 Max(Lane1 left, Lane1 right) => left._value > right._value ? left : right;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 Abs(Lane1 value) => new(MathF.Abs(value._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 Sqrt(Lane1 value) => new(MathF.Sqrt(value._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 Floor(Lane1 value) => new(MathF.Floor(value._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 Select(Lane1 mask, Lane1 set, Lane1 unset) => mask.Bits != 0 ? set : unset;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool Any(Lane1 mask) => mask.Bits != 0;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 PowerOfTwo(Lane1 integer) => FromBits(((int)integer._value + 127) << 23);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 Exponent(Lane1 value) => new((value.Bits >> 23) - 127);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 Mantissa(Lane1 value) => FromBits((value.Bits & 0x7FFFFF) | 0x3F800000);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Lane1 FromBits(int bits) => new(BitConverter.Int32BitsToSingle(bits));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Lane1 Mask(bool set) => FromBits(set ? -1 : 0);
}
