using DayBrief.Texts;
using DayBrief.Units;

namespace DayBrief.Soundings.Formats.Csv;

/// <summary>Turns rows into levels.</summary>
/// <param name="header">The columns.</param>
/// <param name="delimiter">What parts the cells.</param>
/// <param name="facts">What the table says about the launch.</param>
/// <param name="at">Where a row stands, from its number.</param>
internal sealed class CsvLevels(CsvHeader header, char delimiter, ReadAscent facts, Func<int, Origin>? at = null)
{
    private readonly bool _decimalComma = delimiter != ',';
    private readonly Func<int, Origin> _at = at ?? (line => new(line));
    private int _shortRows;
    private int _firstShortRow;
    private int _otherRows;
    private int _firstOtherRow;

    /// <summary>The level of a row; null where the row is blank, a comment, or prose.</summary>
    public ReadLevel? Level(int line, string[] cells)
    {
        if (cells.All(string.IsNullOrWhiteSpace) || cells[0].StartsWith('#') || IsProse(line, cells))
        {
            return null;
        }

        Width(line, cells);
        var origin = _at(line);
        double? Of(CsvQuantity quantity) => Value(quantity, cells, origin);
        var (temperature, pressure) = (Of(CsvQuantity.Temperature), Of(CsvQuantity.Pressure));
        var moisture = Field(origin, header.HeaderOf("dewPointC"));
        var wind = Components(Of(CsvQuantity.WindEastward), Of(CsvQuantity.WindNorthward));
        var level = new ReadLevel(origin)
        {
            PressureHpa = pressure,
            HeightM = Of(CsvQuantity.Height) ?? AboveSea(Of(CsvQuantity.HeightAboveGround), origin),
            TemperatureC = temperature,
            DewPointC = Of(CsvQuantity.DewPoint)
                ?? (temperature - Of(CsvQuantity.DewPointDepression))
                ?? Moisture.FromRelative(temperature, Of(CsvQuantity.RelativeHumidity), moisture)
                ?? Moisture.FromMixing(Of(CsvQuantity.MixingRatio), Of(CsvQuantity.SpecificHumidity), pressure, moisture),
            WindFromDeg = Of(CsvQuantity.WindDirection) ?? wind?.FromDegrees ?? ((Of(CsvQuantity.MovingDirection) + 180) % 360),
            WindMs = Of(CsvQuantity.WindSpeed) ?? wind?.Speed.MetresPerSecond ?? Of(CsvQuantity.MovingSpeed),
            Position = Place(Of(CsvQuantity.Latitude), Of(CsvQuantity.Longitude)),
            FieldName = name => Field(origin, header.HeaderOf(name)).Field,
        };
        return level.HasValue || level.PressureHpa is not null ? level : null;
    }

    /// <summary>Tells an ascent what of the table was not used.</summary>
    public void Remark(ReadAscent ascent)
    {
        if (header.Unknown.Count > 0)
        {
            var names = string.Join(", ", header.Unknown.Take(10));
            ascent.Note("columns-ignored", header.Unknown.Count > 1 ? Words.Of($"Not used: the columns {names}.") : Words.Of($"Not used: the column {names}."));
        }

        if (header.Guessed.Count > 0)
        {
            ascent.Warn("units-from-values", $"The header names no unit here; the values allow only one: {string.Join(", ", header.Guessed)}. Check it.");
        }

        if (_shortRows > 0)
        {
            ascent.Warn("short-rows", $"{_shortRows} row(s) have fewer cells than the header, the first in line {_firstShortRow}; what is missing counts as not reported.");
        }

        if (_otherRows > 0)
        {
            ascent.Note("lines-passed-over", $"{_otherRows} line(s) without any figure are passed over, the first in line {_firstOtherRow}.");
        }
    }

    private static Wind? Components(double? eastwardMs, double? northwardMs) =>
        (eastwardMs, northwardMs) is ({ } east, { } north) ? Wind.FromComponents(east, north) : null;

    private static Position? Place(double? latitude, double? longitude) =>
        (latitude, longitude) is ( >= -90 and <= 90, >= -180 and <= 180) && (latitude, longitude) is not (0, 0)
            ? Position.FromDegrees(latitude.Value, longitude.Value)
            : null;

    /// <summary>In JSON the path to the level comes first.</summary>
    private static Origin Field(Origin origin, string? column) =>
        column is null ? origin : origin with { Field = origin.Field is { } path ? $"{path}.{column}" : column };

    // A title, a line of units or dashes, the source at the end: no cell under a known name holds a figure.
    private bool IsProse(int line, string[] cells)
    {
        var known = header.Columns.Where(column => column.Index < cells.Length && !string.IsNullOrWhiteSpace(cells[column.Index])).ToList();
        if (cells.Any(cell => cell.Contains('\n', StringComparison.Ordinal)))
        {
            // A quotation mark left open has swallowed rows.
            return false;
        }

        var isProse = known.Count == 0
            ? cells.Any(cell => !string.IsNullOrWhiteSpace(cell))
            : known.TrueForAll(column => !CsvNumber.TryRead(cells[column.Index], _decimalComma, out _)) && (known.Count > 1 || cells.Length < header.Width);
        if (isProse && ++_otherRows == 1)
        {
            _firstOtherRow = line;
        }

        return isProse;
    }

    private void Width(int line, string[] cells)
    {
        if (cells.Skip(header.Width).Any(cell => !string.IsNullOrWhiteSpace(cell)))
        {
            throw new Origin(line).Refuse("too-many-cells", delimiter == ','
                ? Words.Of($"the row has {cells.Length} cells, the header {header.Width}. With decimal commas, separate the columns by semicolons.")
                : Words.Of($"the row has {cells.Length} cells, the header {header.Width}."));
        }

        if (cells.Length < header.Width && ++_shortRows == 1)
        {
            _firstShortRow = line;
        }
    }

    private double? Value(CsvQuantity quantity, string[] cells, Origin origin)
    {
        foreach (var column in header.Columns)
        {
            if (column.Quantity == quantity
                && column.Index < cells.Length
                && CsvNumber.Read(cells[column.Index], _decimalComma, Field(origin, column.Header)) is { } value
                && !IsFiller(quantity, value))
            {
                return column.ToBase(value);
            }
        }

        return null;
    }

    // 999.9 and 9999 can be a pressure or a height, and are nothing else; receivers write -1 for a pressure that they lack.
    private static bool IsFiller(CsvQuantity quantity, double value) =>
        (quantity == CsvQuantity.Pressure && value is (-1 or 0))
        || value is 9999 or 999.9 or 9999.9
        && quantity is not (CsvQuantity.Pressure or CsvQuantity.Height or CsvQuantity.HeightAboveGround or CsvQuantity.Time);

    private double? AboveSea(double? aboveGround, Origin origin) => (aboveGround, facts.Source.Elevation) switch
    {
        (null, _) => null,
        ({ } height, { } ground) => ground.Metres + height,
        _ => throw Field(origin, header.HeaderOf("heightM")).Refuse(
            "elevation-missing", "heights above ground need the elevation. Write a line \"# elevation_m: 123\" above the header."),
    };
}
