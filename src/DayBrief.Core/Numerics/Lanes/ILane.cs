namespace DayBrief.Numerics.Lanes;

/// <summary>A number, or several side by side, in single precision: one source of a kernel serves the scalar and the wide form.</summary>
/// <remarks>
/// Only operations that IEEE 754 rounds in one way are offered, and no fused multiply-add, so every lane of every width
/// computes the same bits as the scalar. A mask is a lane that is all ones or all zeros.
/// </remarks>
internal interface ILane<T>
    where T : struct, ILane<T>
{
    /// <summary>Numbers side by side.</summary>
    static abstract int Count { get; }

    static abstract T Of(float value);

    static abstract T Load(ReadOnlySpan<float> from);

    static abstract void Store(T value, Span<float> to);

    static abstract T operator +(T left, T right);

    static abstract T operator -(T left, T right);

    static abstract T operator *(T left, T right);

    static abstract T operator /(T left, T right);

    static abstract T operator &(T left, T right);

    static abstract T operator |(T left, T right);

    /// <summary>Mask of left below right.</summary>
    static abstract T operator <(T left, T right);

    /// <summary>Mask of left above right.</summary>
    static abstract T operator >(T left, T right);

    /// <summary>Mask of the same number.</summary>
    static abstract T Equal(T left, T right);

    /// <summary>The smaller; the right one if equal.</summary>
    static abstract T Min(T left, T right);

    /// <summary>The larger; the right one if equal.</summary>
    static abstract T Max(T left, T right);

    static abstract T Abs(T value);

    static abstract T Sqrt(T value);

    static abstract T Floor(T value);

    /// <summary>Where the mask is set the first, elsewhere the second.</summary>
    static abstract T Select(T mask, T set, T unset);

    /// <summary>Whether any lane of a mask is set.</summary>
    static abstract bool Any(T mask);

    /// <summary>Two to an integer from −126 to 127.</summary>
    static abstract T PowerOfTwo(T integer);

    /// <summary>The binary exponent of a positive normal number, as a number.</summary>
    static abstract T Exponent(T value);

    /// <summary>The same number with the exponent taken out: from 1 up to but without 2.</summary>
    static abstract T Mantissa(T value);
}
