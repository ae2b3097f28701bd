namespace DayBrief.Service.Charts;

/// <summary>What the picture of the day shows, in words.</summary>
internal static class DayPictureWords
{
    public static string Describe(DayPictureInput input) => string.Join(' ', Sentences(input));

    private static IEnumerable<string> Sentences(DayPictureInput input)
    {
        var say = input.In;
        yield return say["Local time across, height above the field up."];
        yield return Tops(input);
        yield return Clouds(input);
        if (input.FreezingLevelM is { } freezing)
            yield return say.Say($"Freezing level {say.Text(freezing)}.");
        if (input.CeilingM is { } ceiling)
            yield return say.Say($"Ceiling of the field {say.Ceiling(ceiling)}.");
        foreach (var key in input.KeyTimes)
            yield return $"{char.ToUpperInvariant(key.Label[0])}{key.Label[1..]} {Clock(key.Time)}.";
        if (input.Now is { } now)
            yield return say.Say($"Now {Clock(now)}.");
        if (input.Sunrise is { } sunrise)
            yield return say.Say($"Sunrise {Clock(sunrise)}.");
        if (input.Sunset is { } sunset)
            yield return say.Say($"Sunset {Clock(sunset)}.");
    }

    private static string Tops(DayPictureInput input)
    {
        var say = input.In;
        var usable = input.Moments.Where(m => m.UsableTopM is not null).ToArray();
        if (usable.Length == 0)
            return say["No usable thermals."];
        var (first, last, best) = (usable[0], usable[^1], usable.MaxBy(m => m.UsableTopM)!);
        var text = say.Say($"Usable thermals from {Clock(first.Time)}, to {say.Text(first.UsableTopM!.Value)}, until {Clock(last.Time)}; highest at {Clock(best.Time)}, {say.Text(best.UsableTopM!.Value)}");
        return best is { P10M: { } low, P90M: { } high }
            ? text + say.Say($", with 8 chances in 10 between {say.Text(low)} and {say.Text(high)}.")
            : $"{text}.";
    }

    private static string Clouds(DayPictureInput input)
    {
        var say = input.In;
        var cloudy = input.Moments.Where(m => m.CloudBaseM is not null).ToArray();
        if (cloudy.Length == 0)
            return say["No cumulus."];
        var (from, to) = (Clock(cloudy[0].Time), Clock(cloudy[^1].Time));
        var (low, high) = (say.Text(cloudy.Min(m => m.CloudBaseM)!.Value), say.Text(cloudy.Max(m => m.CloudBaseM)!.Value));
        var text = say.Say($"Cumulus from {from} to {to}, base {low} to {high}");
        return cloudy.Max(m => m.CloudTopM) is { } top ? text + say.Say($", tops to {say.Text(top)}.") : $"{text}.";
    }

    private static string Clock(TimeOnly time) => DayPictureAxes.Clock(time);
}
