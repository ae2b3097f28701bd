namespace DayBrief.Service.Features.Briefs;

/// <summary>The day by the hour, hours across: usable top, climb, wind across the runway in use.</summary>
internal static class SheetHours
{
    public static SheetBlock Of(SheetOrder order) =>
        HourTable.OfTheSheet(order.Made, order.Reader) is { Count: > 0 } hours ? SheetTable.Of([.. Rows(hours, order.Reader)]) : SheetBlock.None;

    private static IEnumerable<(string Name, IReadOnlyList<string> Cells)> Rows(IReadOnlyList<HourRow> hours, Reader reader)
    {
        yield return (reader["Time"], [.. hours.Select(hour => hour.Time)]);
        if (hours.Any(hour => hour.Top != HourTable.Nothing))
        {
            yield return (reader.Say($"Top, {reader.HeightUnit}"), [.. hours.Select(hour => hour.Top)]);
            yield return (reader.Say($"Climb, {reader.ClimbUnit}"), [.. hours.Select(hour => hour.Climb)]);
        }

        var runways = hours.Select(hour => hour.Runway).Where(runway => runway != HourTable.Nothing).Distinct().ToArray();
        if (runways.Length == 0)
        {
            yield return (reader["Wind across the runway: not known by the hour, no wind is forecast or assumed."], []);
            yield break;
        }

        if (runways.Length > 1)
            yield return (reader["Runway into wind"], [.. hours.Select(hour => hour.Runway)]);
        var name = runways.Length > 1 ? reader.Say($"Across it, {reader.WindUnit}") : reader.Say($"Across {runways[0]}, {reader.WindUnit}");
        yield return (name, [.. hours.Select(hour => hour.Across)]);
    }
}
