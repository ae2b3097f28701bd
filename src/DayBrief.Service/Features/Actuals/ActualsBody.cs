using System.Text;
using System.Text.Json;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Actuals;

/// <summary>Entries out of a request: one object, a list of them, <c>{"entries":[…]}</c>, or the table of <see cref="ActualsFile"/>.</summary>
internal static class ActualsBody
{
    private const int MostEntries = 500;

    /// <exception cref="InvalidInputException">Names the entry and the field.</exception>
    /// <exception cref="BadHttpRequestException">The JSON is not as expected.</exception>
    public static async Task<IReadOnlyList<(Actual Entry, byte[]? Photo)>> ReadAsync(HttpRequest request, DateOnly date, TimeZoneInfo zone, CancellationToken stopping)
    {
        using var reader = new StreamReader(request.Body, Encoding.UTF8);
        var text = (await reader.ReadToEndAsync(stopping)).Trim();
        if (!text.StartsWith('{') && !text.StartsWith('['))
        {
            return text.Length == 0
                ? throw InvalidInputException.Field("body", $"Needs entries as JSON, or a table with the header time,top_m,climb_ms,cloud_base_m.")
                : [.. ActualsFile.Read(text, "body", date, zone).Select(entry => (entry with { Id = Guid.NewGuid().ToString("N") }, (byte[]?)null))];
        }

        var given = Given(text);
        if (given.Count is 0 or > MostEntries)
            throw InvalidInputException.Field("entries", $"Needs 1 to {MostEntries} entries; there are {given.Count}.");
        return [.. given.Select((entry, i) => entry.Checked(date, zone, $"entries[{i}]"))];
    }

    private static List<ActualJson> Given(string text)
    {
        try
        {
            using var whole = JsonDocument.Parse(text);
            if (whole.RootElement.ValueKind == JsonValueKind.Array)
                return List(whole.RootElement);
            return whole.RootElement.TryGetProperty("entries", out var entries)
                ? List(entries)
                : [whole.RootElement.Deserialize<ActualJson>(Json.Line)!];
        }
        catch (JsonException wrong)
        {
            throw new BadHttpRequestException(wrong.Message, wrong);
        }
    }

    private static List<ActualJson> List(JsonElement list) =>
        [.. list.Deserialize<List<ActualJson?>>(Json.Line)!.Select((entry, i) =>
            entry ?? throw InvalidInputException.Field($"entries[{i}]", $"Needs an object with the time and what was seen."))];
}
