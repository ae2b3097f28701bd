using System.Runtime.CompilerServices;

namespace DayBrief.Numerics.Lanes;

/// <summary>Elementary functions of lanes, built from exactly rounded operations so that every width gives the same bits.</summary>
internal static class LaneMath
{
    /// <summary>log₂ of a positive normal number, within 4·10⁻⁷ of it or of 1.</summary>
    /// <remarks>With m between √½ and √2 and s = (m−1)/(m+1): log₂ m = (2/ln 2)·(s + s³/3 + s⁵/5 + s⁷/7), next term 10⁻⁸.</remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Log2<T>(T value)
        where T : struct, ILane<T>
    {
        var one = T.Of(1);
        var mantissa = T.Mantissa(value);
        var high = mantissa > T.Of(1.41421356f);
        mantissa = T.Select(high, mantissa * T.Of(0.5f), mantissa);
        var exponent = T.Exponent(value) + (high & one);
        var s = (mantissa - one) / (mantissa + one);
        var q = s * s;
        var series = ((((q * T.Of(0.41219858f)) + T.Of(0.57707802f)) * q) + T.Of(0.96179669f)) * q;
        return exponent + (s * (series + T.Of(2.88539008f)));
    }

    /// <summary>2 to a power, held between 2⁻¹²⁰ and 2¹²⁰, within 3·10⁻⁷ of itself.</summary>
    /// <remarks>Taylor series of 2^f about the nearest integer, |f| ≤ ½, to the sixth power.</remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Exp2<T>(T power)
        where T : struct, ILane<T>
    {
        power = T.Min(T.Max(power, T.Of(-120)), T.Of(120));
        var integer = T.Floor(power + T.Of(0.5f));
        var f = power - integer;
        var p = (((T.Of(1.5403530e-4f) * f) + T.Of(1.3333558e-3f)) * f) + T.Of(9.6181291e-3f);
        p = (((p * f) + T.Of(5.5504109e-2f)) * f) + T.Of(0.24022651f);
        p = (((p * f) + T.Of(0.69314718f)) * f) + T.Of(1);
        return p * T.PowerOfTwo(integer);
    }

    /// <summary>Sine of an angle between −1.2 and 1.2 radians, within 2·10⁻⁷.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Sin<T>(T angle)
        where T : struct, ILane<T>
    {
        var q = angle * angle;
        var p = (((T.Of(2.7557319e-6f) * q) - T.Of(1.9841270e-4f)) * q) + T.Of(8.3333333e-3f);
        return angle * (T.Of(1) - (q * (T.Of(0.16666667f) - (q * p))));
    }

    /// <summary>Cosine of an angle between −π/2 and π/2 radians, within 10⁻⁶.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Cos<T>(T angle)
        where T : struct, ILane<T>
    {
        var q = angle * angle;
        var p = (((T.Of(2.4801587e-5f) - (T.Of(2.7557319e-7f) * q)) * q) - T.Of(1.3888889e-3f)) * q;
        p += T.Of(4.1666667e-2f);
        return T.Of(1) - (q * (T.Of(0.5f) - (q * p)));
    }

    /// <summary>A value held between two others.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Clamp<T>(T value, T low, T high)
        where T : struct, ILane<T> => T.Min(T.Max(value, low), high);
}
