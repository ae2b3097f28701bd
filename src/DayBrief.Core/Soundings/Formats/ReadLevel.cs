namespace DayBrief.Soundings.Formats;

/// <summary>One level as a format reports it, not checked yet; null is not reported.</summary>
/// <param name="Origin">Where it stands.</param>
internal sealed record ReadLevel(Origin Origin)
{
    public double? PressureHpa { get; init; }

    public double? HeightM { get; init; }

    public double? TemperatureC { get; init; }

    public double? DewPointC { get; init; }

    public double? WindFromDeg { get; init; }

    public double? WindMs { get; init; }

    public TimeSpan? SinceLaunch { get; init; }

    public Units.Position? Position { get; init; }

    /// <summary>Which of two levels at one pressure is believed: the smaller rank, and among equals the first.</summary>
    public int Rank { get; init; }

    /// <summary>What the input calls one of the level's values, by its name in the contract ("temperatureC").</summary>
    public Func<string, string?>? FieldName { get; init; }

    public bool HasValue => HeightM is not null || TemperatureC is not null || DewPointC is not null || WindMs is not null;

    /// <summary>Where one value of this level stands.</summary>
    public Origin At(string name) => FieldName?.Invoke(name) is { } field ? Origin with { Field = field } : Origin;
}
