namespace DayBrief.Soundings.Formats.Csv;

/// <summary>The columns of a table, from its header.</summary>
internal sealed class CsvHeader
{
    private CsvHeader(IReadOnlyList<CsvColumn> columns, int width)
    {
        Columns = columns;
        Width = width;
    }

    public IReadOnlyList<CsvColumn> Columns { get; }

    /// <summary>Number of cells in the header.</summary>
    public int Width { get; }

    /// <summary>Header texts that name no known quantity.</summary>
    public required IReadOnlyList<string> Unknown { get; init; }

    /// <summary>How many cells name a known quantity.</summary>
    public static int KnownCells(IEnumerable<string> cells) => cells.Count(cell => CsvColumn.Meaning(cell) is not null);

    /// <param name="cells">The header.</param>
    /// <param name="units">A second row of units, where the table has one; otherwise empty.</param>
    /// <param name="line">Where the header stands.</param>
    public static CsvHeader Read(IReadOnlyList<string> cells, IReadOnlyList<string> units, int line)
    {
        var columns = new List<CsvColumn>();
        var unknown = new List<string>();
        for (var i = 0; i < cells.Count; i++)
        {
            var header = cells[i].Trim();
            if (CsvColumn.Meaning(header) is not { } meaning)
            {
                unknown.Add(header);
                continue;
            }

            var unit = i < units.Count ? CsvColumn.UnitOf(units[i]) : "";
            columns.Add(new(i, header, meaning.Quantity, Conversion(meaning, unit, header, line)));
        }

        return Complete(new(columns, cells.Count) { Unknown = [.. unknown.Where(name => name.Length > 0)] }, line);
    }

    /// <summary>The column of times, where the table has one.</summary>
    public CsvColumn? Time => Columns.FirstOrDefault(column => column.Quantity == CsvQuantity.Time);

    public string? HeaderOf(string contractName) => contractName switch
    {
        "pressureHpa" => First(CsvQuantity.Pressure),
        "heightM" => First(CsvQuantity.Height) ?? First(CsvQuantity.HeightAboveGround),
        "temperatureC" => First(CsvQuantity.Temperature),
        "dewPointC" => First(CsvQuantity.DewPoint) ?? First(CsvQuantity.DewPointDepression) ?? First(CsvQuantity.RelativeHumidity)
            ?? First(CsvQuantity.SpecificHumidity) ?? First(CsvQuantity.MixingRatio),
        "windDirectionDeg" => First(CsvQuantity.WindDirection) ?? First(CsvQuantity.WindEastward),
        _ => First(CsvQuantity.WindSpeed) ?? First(CsvQuantity.WindNorthward),
    };

    private string? First(CsvQuantity quantity) => Columns.FirstOrDefault(column => column.Quantity == quantity)?.Header;

    private static CsvHeader Complete(CsvHeader header, int line)
    {
        var has = header.Columns.Select(column => column.Quantity).ToHashSet();
        if (!has.Contains(CsvQuantity.Temperature))
        {
            throw new Origin(line).Refuse("column-missing", "no column for temperature. Name it for instance temperature_c.");
        }

        return has.Contains(CsvQuantity.Pressure) || has.Contains(CsvQuantity.Height) || has.Contains(CsvQuantity.HeightAboveGround)
            ? header
            : throw new Origin(line).Refuse("column-missing", "no column for pressure or height. Name it for instance pressure_hpa.");
    }

    private static Func<double, double> Conversion((CsvQuantity Quantity, string? Unit) meaning, string unit, string header, int line)
    {
        var named = meaning.Unit ?? unit;
        if (named.Length == 0)
        {
            // A wind direction is always in degrees and a time needs none; everything else has two or more units in use.
            return meaning.Quantity is CsvQuantity.WindDirection or CsvQuantity.Time ? value => value : throw new Origin(line, Field: header).Refuse(
                "unit-missing", $"the column does not name its unit. Write for instance {Example(meaning.Quantity)}.");
        }

        return CsvUnits.Conversion(meaning.Quantity, named) ?? throw new Origin(line, Field: header).Refuse(
            "unit-unknown", $"the unit \"{named}\" is not known for this quantity. Write for instance {Example(meaning.Quantity)}.");
    }

    private static string Example(CsvQuantity quantity) => quantity switch
    {
        CsvQuantity.Pressure => "pressure_hpa",
        CsvQuantity.Height => "height_m or height_ft",
        CsvQuantity.HeightAboveGround => "height_agl_m or height_agl_ft",
        CsvQuantity.Temperature => "temperature_c or temperature_k",
        CsvQuantity.DewPoint => "dewpoint_c or dewpoint_k",
        CsvQuantity.DewPointDepression => "dew_point_depression_c",
        CsvQuantity.RelativeHumidity => "rh_pct",
        CsvQuantity.SpecificHumidity => "specific_humidity_gkg",
        CsvQuantity.MixingRatio => "mixing_ratio_gkg",
        _ => "wind_speed_kt, wind_speed_ms or wind_speed_kmh",
    };
}
