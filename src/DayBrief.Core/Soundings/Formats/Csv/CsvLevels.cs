using DayBrief.Texts;
using DayBrief.Units;

namespace DayBrief.Soundings.Formats.Csv;

/// <summary>Turns rows into levels.</summary>
internal sealed class CsvLevels(CsvHeader header, char delimiter, ReadAscent facts)
{
    private readonly bool _decimalComma = delimiter != ',';
    private int _shortRows;
    private int _firstShortRow;

    /// <summary>The level of a row; null where the row is blank or a comment.</summary>
    public ReadLevel? Level(int line, string[] cells)
    {
        if (cells.All(string.IsNullOrWhiteSpace) || cells[0].StartsWith('#'))
        {
            return null;
        }

        Width(line, cells);
        var origin = new Origin(line);
        double? Of(CsvQuantity quantity) => Value(quantity, cells, origin);
        var (temperature, pressure) = (Of(CsvQuantity.Temperature), Of(CsvQuantity.Pressure));
        var moisture = origin with { Field = header.HeaderOf("dewPointC") };
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
            WindFromDeg = Of(CsvQuantity.WindDirection) ?? wind?.FromDegrees,
            WindMs = Of(CsvQuantity.WindSpeed) ?? wind?.Speed.MetresPerSecond,
            FieldName = header.HeaderOf,
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

        if (_shortRows > 0)
        {
            ascent.Warn("short-rows", $"{_shortRows} row(s) have fewer cells than the header, the first in line {_firstShortRow}; what is missing counts as not reported.");
        }
    }

    private static Wind? Components(double? eastwardMs, double? northwardMs) =>
        (eastwardMs, northwardMs) is ({ } east, { } north) ? Wind.FromComponents(east, north) : null;

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
                && CsvNumber.Read(cells[column.Index], _decimalComma, origin with { Field = column.Header }) is { } value)
            {
                return column.ToBase(value);
            }
        }

        return null;
    }

    private double? AboveSea(double? aboveGround, Origin origin) => (aboveGround, facts.Source.Elevation) switch
    {
        (null, _) => null,
        ({ } height, { } ground) => ground.Metres + height,
        _ => throw (origin with { Field = header.HeaderOf("heightM") }).Refuse(
            "elevation-missing", "heights above ground need the elevation. Write a line \"# elevation_m: 123\" above the header."),
    };
}
