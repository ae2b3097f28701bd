using System.Globalization;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Verifying;

/// <summary>The files of one day in a folder, by their names: <c>YYYY-MM-DD.morning.*</c>, and any of <c>….afternoon.*</c>,
/// <c>….reports.txt</c>, <c>….igc</c>, <c>….actuals.csv</c>.</summary>
internal sealed record DayFiles(DateOnly Date, string Morning)
{
    public string? Afternoon { get; private init; }

    public string? Reports { get; private init; }

    public string? Actuals { get; private init; }

    public required IReadOnlyList<string> Flights { get; init; }

    /// <summary>Days with a morning ascent, in their order; what belongs to no such day is named in <paramref name="left"/>.</summary>
    /// <exception cref="InvalidInputException">No folder, or no day in it.</exception>
    public static IReadOnlyList<DayFiles> In(string folder, out IReadOnlyList<string> left)
    {
        if (!Directory.Exists(folder))
            throw InvalidInputException.Field("FOLDER", $"There is no folder {folder}.");
        var files = Directory.EnumerateFiles(folder).Select(path => (Path: path, Name: Path.GetFileName(path))).OrderBy(file => file.Name, StringComparer.Ordinal).ToArray();
        var byDate = files.Where(file => DateOf(file.Name) is not null).GroupBy(file => DateOf(file.Name)!.Value);
        var days = byDate.Select(day => Of(day.Key, [.. day])).OfType<DayFiles>().OrderBy(day => day.Date).ToArray();
        if (days.Length == 0)
            throw InvalidInputException.Field("FOLDER", $"{folder} holds no morning ascent: files are named YYYY-MM-DD.morning.* (and .afternoon.*, .reports.txt, .igc, .actuals.csv).");
        var known = days.Select(day => day.Date).ToHashSet();
        left = [.. files.Where(file => DateOf(file.Name) is not { } date || !known.Contains(date)).Select(file => file.Name)];
        return days;
    }

    private static DayFiles? Of(DateOnly date, (string Path, string Name)[] files)
    {
        string? First(string kind) => files.FirstOrDefault(file => file.Name[10..].StartsWith($".{kind}.", StringComparison.OrdinalIgnoreCase)).Path;
        return First("morning") is not { } morning
            ? null
            : new(date, morning)
            {
                Afternoon = First("afternoon"),
                Reports = First("reports"),
                Actuals = First("actuals"),
                Flights = [.. files.Where(file => file.Name.EndsWith(".igc", StringComparison.OrdinalIgnoreCase)).Select(file => file.Path)],
            };
    }

    private static DateOnly? DateOf(string name) =>
        name.Length > 11 && DateOnly.TryParseExact(name[..10], "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date) && name[10] == '.' ? date : null;
}
