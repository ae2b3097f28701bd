using System.Globalization;
using System.Text;
using System.Text.Json;
using DayBrief.Service.Features.Soundings;
using DayBrief.Service.Infrastructure;
using DayBrief.Soundings.Formats.Typed;

namespace DayBrief.Service.Features.Desk;

/// <summary>What stands in the fields of the desk, word for word, so that nothing is lost when it is refused.</summary>
public sealed class DeskFields
{
    /// <summary>Rows of the table for typed levels.</summary>
    public const int Rows = 14;

    /// <summary>Periods that cloud and wind can be given for.</summary>
    public const int Periods = 4;

    private static readonly HashSet<string> NotKept = ["version", "id", "resolve"];

    private readonly Dictionary<string, string> _values;

    public DeskFields(IReadOnlyDictionary<string, string> values) => _values = new(values);

    /// <summary>The text as entered, or empty.</summary>
    public string this[string field]
    {
        get => _values.GetValueOrDefault(field, "");
        internal set => _values[field] = value;
    }

    /// <summary>All that was entered, without what is empty.</summary>
    public IReadOnlyDictionary<string, string> Values =>
        _values.Where(entry => entry.Value.Length > 0).OrderBy(entry => entry.Key, StringComparer.Ordinal).ToDictionary();

    /// <summary>The fields of a request; files and what belongs to the transport are not among them.</summary>
    public static async Task<DeskFields> ReadAsync(HttpRequest request, CancellationToken stopping)
    {
        var form = await request.ReadFormAsync(stopping);
        // The framework limits the values of a form with files only all together.
        if (form.Any(field => field.Value.ToString().Length > SoundingBody.MaxBytes))
            throw SoundingBody.TooLarge("text");
        return new(form
            .Where(field => !NotKept.Contains(field.Key) && !field.Key.StartsWith("__", StringComparison.Ordinal))
            .ToDictionary(field => field.Key, field => field.Value.ToString().ReplaceLineEndings("\n")));
    }

    /// <summary>Something is pasted.</summary>
    internal bool HasText => !string.IsNullOrWhiteSpace(this["text"]);

    /// <summary>Some level is typed.</summary>
    internal bool HasTyped => TypedCells.Any(cell => this[cell].Length > 0);

    /// <summary>The pasted text as it is kept.</summary>
    internal byte[] TextBytes => Encoding.UTF8.GetBytes(this["text"]);

    private static IEnumerable<string> TypedCells =>
        DeskLabel.Levels.SelectMany(column => Enumerable.Range(0, Rows).Select(row => $"{column.Column}{row}"));

    /// <summary>The typed levels are those of other fields.</summary>
    internal bool TypedAsIn(DeskFields other) => TypedCells.All(cell => this[cell] == other[cell]);

    /// <summary>What stands in a field, line by line.</summary>
    internal IReadOnlyList<string> Lines(string field) => this[field].Split('\n', StringSplitOptions.RemoveEmptyEntries);

    /// <summary>The typed levels as they are kept.</summary>
    /// <exception cref="InvalidInputException">A typed cell is no number.</exception>
    internal byte[] TypedLevels()
    {
        var errors = new FieldErrors();
        var levels = Enumerable.Range(0, Rows).Select(row => Level(row, errors)).OfType<TypedLevel>().ToArray();
        var typed = new TypedSounding
        {
            Station = NullIfEmpty("station"),
            ElevationM = Number("ascentElevationM", errors),
            QnhHpa = Number("qnhHpa", errors),
            Levels = levels,
        };
        errors.ThrowIfAny();
        return JsonSerializer.SerializeToUtf8Bytes(typed, Json.Line);
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

    internal double? Number(string field, FieldErrors errors, double min, double max) =>
        errors.Optional(field, Number(field, errors), min, max);

    internal TimeOnly? Time(string field, FieldErrors errors)
    {
        var text = this[field].Trim().Replace('.', ':');
        if (text.Length == 0)
            return null;
        if (TimeOnly.TryParse(text, CultureInfo.InvariantCulture, out var time))
            return time;
        errors.Add(field, $"\"{this[field]}\" is not a time of day; write it as 13:30.");
        return null;
    }

    internal string? NullIfEmpty(string field) => string.IsNullOrWhiteSpace(this[field]) ? null : this[field].Trim();

    /// <summary>Puts the text of a refused file where the reader can see and mend it; false when it is no text.</summary>
    internal bool ShowFile(byte[] file)
    {
        if (file.Contains((byte)0) || file.Length >= 200_000)
            return false;
        _values["text"] = Encoding.UTF8.GetString(file).ReplaceLineEndings("\n");
        return true;
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
