using System.Globalization;
using DayBrief.Days;
using DayBrief.Service.Infrastructure;
using DayBrief.Units;

namespace DayBrief.Service.Features.Briefs;

/// <summary>Reads assumptions by local time; each wrong element is named, and they may come in any order.</summary>
internal static class HourlyAssumptions
{
    private const int Most = 48;

    public static IEnumerable<CloudFrom> Cloud(IReadOnlyList<CloudFromJson>? list, FieldErrors errors)
    {
        var entries = InOrder("cloudByHour", list, cloud => cloud.From, errors);
        return [.. entries.Select(entry => new CloudFrom(entry.Time, errors.Number($"{entry.Field}.oktas", entry.Item.Oktas)))];
    }

    public static IEnumerable<WindFrom> Wind(IReadOnlyList<WindFromJson>? list, FieldErrors errors)
    {
        var entries = InOrder("windByHour", list, wind => wind.From, errors);
        return [.. entries.Select(entry => Wind(entry.Time, entry.Item, entry.Field, errors))];
    }

    private static WindFrom Wind(TimeOnly time, WindFromJson wind, string field, FieldErrors errors)
    {
        var degrees = errors.Number($"{field}.directionDeg", wind.DirectionDeg);
        var speed = errors.Number($"{field}.speedKt", wind.SpeedKt);
        var gust = errors.Optional($"{field}.gustKt", wind.GustKt);
        if (gust < speed)
        {
            errors.Add($"{field}.gustKt", $"Gusts cannot be below the mean speed of {speed} kt; it is {gust}.");
            gust = null;
        }

        return new(time, Units.Wind.From(degrees, Speed.FromKnots(speed)), gust is { } kt ? Speed.FromKnots(kt) : null);
    }

    private static (TimeOnly Time, T Item, string Field)[] InOrder<T>(
        string name, IReadOnlyList<T>? list, Func<T, string?> from, FieldErrors errors)
    {
        if (list?.Count > Most)
        {
            errors.Add(name, $"At most {Most} entries; there are {list.Count}.");
            return [];
        }

        var taken = new HashSet<TimeOnly>();
        var entries = new List<(TimeOnly Time, T Item, string Field)>();
        for (var i = 0; i < (list?.Count ?? 0); i++)
        {
            var field = $"{name}[{i}]";
            if (list![i] is not { } item)
                errors.Add(field, "Nothing stands here.");
            else if (!TimeOnly.TryParseExact(from(item), ["HH:mm", "H:mm"], CultureInfo.InvariantCulture, DateTimeStyles.None, out var time))
                errors.Add($"{field}.from", $"Needs a local time as 13:30; it is \"{from(item)}\".");
            else if (!taken.Add(time))
                errors.Add($"{field}.from", $"{time:HH:mm} stands twice.");
            else
                entries.Add((time, item, field));
        }

        return [.. entries.OrderBy(entry => entry.Time)];
    }
}
