namespace DayBrief.Flight.Centring;

/// <summary>A mean over encounters and half the width of its 95 % confidence interval.</summary>
/// <param name="Mean">Mean.</param>
/// <param name="HalfWidth95">1.96 standard errors (normal approximation, good for hundreds of encounters and more).</param>
public readonly record struct Estimate(double Mean, double HalfWidth95)
{
    /// <summary>From one value per encounter, summed in order so that it never depends on threads.</summary>
    internal static Estimate Of(ReadOnlySpan<float> values, double scale = 1)
    {
        double sum = 0, squares = 0;
        foreach (var value in values)
            sum += value;
        var mean = sum / values.Length;
        foreach (var value in values)
            squares += (value - mean) * (value - mean);
        var error = Math.Sqrt(squares / (values.Length - 1) / values.Length);
        return new(scale * mean, Math.Abs(scale) * 1.96 * error);
    }

    /// <summary>Of the difference first less second, pair by pair: what both have in common of the encounter drops out.</summary>
    internal static Estimate OfDifference(ReadOnlySpan<float> first, ReadOnlySpan<float> second, double scale = 1)
    {
        var differences = new float[first.Length];
        for (var pair = 0; pair < differences.Length; pair++)
            differences[pair] = first[pair] - second[pair];
        return Of(differences, scale);
    }
}
