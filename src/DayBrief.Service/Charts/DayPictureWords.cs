using System.Text;

namespace DayBrief.Service.Charts;

/// <summary>What the picture of the day shows, in words.</summary>
internal static class DayPictureWords
{
    public static string Describe(DayPictureInput input)
    {
        var text = new StringBuilder("Local time across, height above the field up.");
        text.Append(Tops(input)).Append(Clouds(input));
        if (input.FreezingLevelM is { } freezing)
            text.Append(' ').Append($"Freezing level {input.In.Text(freezing)}.");
        if (input.CeilingM is { } ceiling)
            text.Append(' ').Append($"Ceiling of the field {input.In.Text(ceiling)}.");
        foreach (var key in input.KeyTimes)
            text.Append(' ').Append($"{char.ToUpperInvariant(key.Label[0])}{key.Label[1..]} {Clock(key.Time)}.");
        if (input.Sunrise is { } sunrise)
            text.Append(' ').Append($"Sunrise {Clock(sunrise)}.");
        if (input.Sunset is { } sunset)
            text.Append(' ').Append($"Sunset {Clock(sunset)}.");
        return text.ToString();
    }

    private static string Tops(DayPictureInput input)
    {
        var usable = input.Moments.Where(m => m.UsableTopM is not null).ToArray();
        if (usable.Length == 0)
            return " No usable thermals.";
        var (first, last, best) = (usable[0], usable[^1], usable.MaxBy(m => m.UsableTopM)!);
        var text = $" Usable thermals from {Clock(first.Time)}, to {input.In.Text(first.UsableTopM!.Value)},"
            + $" until {Clock(last.Time)}; highest at {Clock(best.Time)}, {input.In.Text(best.UsableTopM!.Value)}";
        return best is { P10M: { } low, P90M: { } high }
            ? $"{text}, with 8 chances in 10 between {input.In.Text(low)} and {input.In.Text(high)}."
            : $"{text}.";
    }

    private static string Clouds(DayPictureInput input)
    {
        var cloudy = input.Moments.Where(m => m.CloudBaseM is not null).ToArray();
        if (cloudy.Length == 0)
            return " No cumulus.";
        var text = $" Cumulus from {Clock(cloudy[0].Time)} to {Clock(cloudy[^1].Time)}, base"
            + $" {input.In.Text(cloudy.Min(m => m.CloudBaseM)!.Value)} to {input.In.Text(cloudy.Max(m => m.CloudBaseM)!.Value)}";
        return cloudy.Max(m => m.CloudTopM) is { } top ? $"{text}, tops to {input.In.Text(top)}." : $"{text}.";
    }

    private static string Clock(TimeOnly time) => DayPictureAxes.Clock(time);
}
