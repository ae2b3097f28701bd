namespace DayBrief.Days;

/// <summary>What one figure may come to. Null in a place means that the figure does not exist in that share of the cases.</summary>
/// <typeparam name="T">The figure's type.</typeparam>
/// <param name="P10">Exceeded in nine cases of ten.</param>
/// <param name="P50">Exceeded in half the cases.</param>
/// <param name="P90">Exceeded in one case of ten.</param>
public readonly record struct DayRange<T>(T? P10, T? P50, T? P90)
    where T : struct;

/// <summary>The 10, 50 and 90 % of the headline figures from the ensemble. A time that does not come counts as later than
/// any other, a depth, climb or height that does not exist as less.</summary>
public sealed record DayRanges
{
    /// <summary>When thermals reach the usable depth.</summary>
    public required DayRange<DateTimeOffset> TriggerTime { get; init; }

    /// <summary>Screen temperature then, °C.</summary>
    public required DayRange<double> TriggerTemperatureC { get; init; }

    /// <summary>First usable thermal.</summary>
    public required DayRange<DateTimeOffset> FirstUsable { get; init; }

    /// <summary>Start of the best window.</summary>
    public required DayRange<DateTimeOffset> BestFrom { get; init; }

    /// <summary>End of the best window.</summary>
    public required DayRange<DateTimeOffset> BestTo { get; init; }

    /// <summary>Last usable thermal.</summary>
    public required DayRange<DateTimeOffset> Last { get; init; }

    /// <summary>Greatest depth, m.</summary>
    public required DayRange<double> MaxDepthM { get; init; }

    /// <summary>Greatest usable height, m above ground.</summary>
    public required DayRange<double> MaxUsableTopM { get; init; }

    /// <summary>Greatest climb, m/s.</summary>
    public required DayRange<double> MaxClimbMs { get; init; }

    /// <summary>First cumulus.</summary>
    public required DayRange<DateTimeOffset> FirstCloud { get; init; }

    /// <summary>Base of the first cumulus, m above ground.</summary>
    public required DayRange<double> FirstCloudBaseM { get; init; }
}
