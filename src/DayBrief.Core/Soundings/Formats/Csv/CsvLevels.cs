using DayBrief.Thermodynamics;

namespace DayBrief.Soundings.Formats.Csv;

/// <summary>Turns rows into levels.</summary>
internal sealed class CsvLevels(CsvHeader header, char delimiter, ReadAscent ascent)
{
    private readonly bool _decimalComma = delimiter != ',';
    private int _shortRows;
    private int _firstShortRow;

    public void Add(int line, string[] cells)
    {
        if (cells.All(string.IsNullOrWhiteSpace) || cells[0].StartsWith('#'))
        {
            return;
        }

        Width(line, cells);
        var origin = new Origin(line);
        var temperature = Value(CsvQuantity.Temperature, cells, origin);
        var level = new ReadLevel(origin)
        {
            PressureHpa = Value(CsvQuantity.Pressure, cells, origin),
            HeightM = Value(CsvQuantity.Height, cells, origin) ?? AboveSea(Value(CsvQuantity.HeightAboveGround, cells, origin), origin),
            TemperatureC = temperature,
            DewPointC = Value(CsvQuantity.DewPoint, cells, origin)
                ?? (temperature - Value(CsvQuantity.DewPointDepression, cells, origin))
                ?? FromHumidity(temperature, Value(CsvQuantity.RelativeHumidity, cells, origin), origin),
            WindFromDeg = Value(CsvQuantity.WindDirection, cells, origin),
            WindMs = Value(CsvQuantity.WindSpeed, cells, origin),
            FieldName = header.HeaderOf,
        };
        if (level.HasValue || level.PressureHpa is not null)
        {
            ascent.Add(level);
        }
    }

    public void Close()
    {
        if (header.Unknown.Count > 0)
        {
            ascent.Note("columns-ignored", $"Not used: the column{(header.Unknown.Count > 1 ? "s" : "")} {string.Join(", ", header.Unknown.Take(10))}.");
        }

        if (_shortRows > 0)
        {
            ascent.Warn("short-rows", $"{_shortRows} row(s) have fewer cells than the header, the first in line {_firstShortRow}; what is missing counts as not reported.");
        }
    }

    private void Width(int line, string[] cells)
    {
        if (cells.Skip(header.Width).Any(cell => !string.IsNullOrWhiteSpace(cell)))
        {
            var hint = delimiter == ',' ? " With decimal commas, separate the columns by semicolons." : "";
            throw new Origin(line).Refuse(
                "too-many-cells", $"the row has {cells.Length} cells, the header {header.Width}.{hint}");
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

    private double? AboveSea(double? aboveGround, Origin origin) => (aboveGround, ascent.Source.Elevation) switch
    {
        (null, _) => null,
        ({ } height, { } ground) => ground.Metres + height,
        _ => throw (origin with { Field = header.HeaderOf("heightM") }).Refuse(
            "elevation-missing", "heights above ground need the elevation. Write a line \"# elevation_m: 123\" above the header."),
    };

    private double? FromHumidity(double? temperature, double? percent, Origin origin) => (temperature, percent) switch
    {
        (null, _) or (_, null) => null,
        (_, < 0 or > 110) => throw (origin with { Field = header.HeaderOf("dewPointC") }).Refuse(
            "humidity-impossible", $"a relative humidity of {percent:0.#} % is not possible."),
        ( < -120 or > 65, _) => null,
        (_, < 0.01) => null,
        ({ } celsius, { } humidity) => humidity >= 100 ? celsius : Saturation.DewPointCelsius(humidity / 100 * Saturation.OverWaterHpa(celsius)),
    };
}
