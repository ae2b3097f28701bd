using System.Globalization;
using System.Text;
using System.Text.Json;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Infrastructure;
using DayBrief.Soundings.Formats.Typed;

namespace DayBrief.Service.Features.Briefs;

/// <summary>What somebody typed into the form, word for word, so that nothing is lost when it is refused.</summary>
public sealed class BriefFormInput
{
    /// <summary>Rows of the table for typed levels.</summary>
    public const int Rows = 14;

    private readonly Dictionary<string, string> _values;

    private BriefFormInput(Dictionary<string, string> values) => _values = values;

    /// <summary>The text as entered, or empty.</summary>
    public string this[string field] => _values.GetValueOrDefault(field, "");

    public static BriefFormInput Empty(DateOnly today, SiteJson? site)
    {
        var input = new BriefFormInput(new() { ["date"] = today.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) });
        if (site is not null)
            input._values["site"] = site.Id!;
        return input;
    }

    public static async Task<(BriefFormInput Input, byte[]? File, string? FileName)> ReadAsync(HttpRequest request, CancellationToken stopping)
    {
        var form = await request.ReadFormAsync(stopping);
        var values = form.ToDictionary(field => field.Key, field => field.Value.ToString());
        if (form.Files["file"] is not { Length: > 0 } file)
            return (new(values), null, null);
        using var buffer = new MemoryStream();
        await file.CopyToAsync(buffer, stopping);
        return (new(values), buffer.ToArray(), file.FileName);
    }

    /// <summary>The ascent: the file, else the pasted text, else the typed rows.</summary>
    /// <exception cref="InvalidInputException">None is given, or a typed cell is no number.</exception>
    internal (byte[] Content, string Name) Ascent(byte[]? file, string? fileName)
    {
        if (file is not null)
            return (file, fileName ?? "file");
        if (!string.IsNullOrWhiteSpace(this["text"]))
            return (Encoding.UTF8.GetBytes(this["text"]), "pasted text");
        var errors = new FieldErrors();
        var levels = Enumerable.Range(0, Rows).Select(row => Level(row, errors)).OfType<TypedLevel>().ToArray();
        if (levels.Length == 0)
            errors.Add("text", "There is no ascent yet: paste it, choose its file, or type at least six levels.");
        errors.ThrowIfAny();
        var typed = new TypedSounding
        {
            Station = NullIfEmpty("station"),
            ElevationM = Number("ascentElevationM", errors),
            QnhHpa = Number("qnhHpa", errors),
            Levels = levels,
        };
        errors.ThrowIfAny();
        return (JsonSerializer.SerializeToUtf8Bytes(typed, Json.Line), "typed levels");
    }

    internal double? Number(string field, FieldErrors errors)
    {
        var text = this[field].Trim().Replace(',', '.');
        if (text.Length == 0)
            return null;
        if (double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value))
            return value;
        errors.Add(field, $"\"{this[field]}\" is not a number.");
        return null;
    }

    internal string? NullIfEmpty(string field) => string.IsNullOrWhiteSpace(this[field]) ? null : this[field].Trim();

    /// <summary>Puts the text of a refused file where the reader can see and mend it.</summary>
    internal void ShowFile(byte[] file)
    {
        if (string.IsNullOrWhiteSpace(this["text"]) && !file.Contains((byte)0) && file.Length < 200_000)
            _values["text"] = Encoding.UTF8.GetString(file);
    }

    private TypedLevel? Level(int row, FieldErrors errors)
    {
        double? Cell(string column) => Number($"{column}{row}", errors);
        var level = new TypedLevel
        {
            PressureHpa = Cell("p"),
            HeightM = Cell("h"),
            TemperatureC = Cell("t"),
            DewPointC = Cell("d"),
            WindDirectionDeg = Cell("wd"),
            WindSpeedKt = Cell("ws"),
        };
        return level == new TypedLevel() ? null : level;
    }
}
