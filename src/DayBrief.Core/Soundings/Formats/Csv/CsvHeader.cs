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

    /// <summary>Columns whose unit the values told, as "height in m".</summary>
    public required IReadOnlyList<string> Guessed { get; init; }

    /// <summary>How many cells name a known quantity.</summary>
    public static int KnownCells(IEnumerable<string> cells) => cells.Count(cell => CsvColumn.Meaning(cell) is not null);

    /// <param name="cells">The header.</param>
    /// <param name="units">A second row of units, where the table has one; otherwise empty.</param>
    /// <param name="line">Where the header stands.</param>
    /// <param name="guess">Tells units from the values, where the header names none.</param>
    public static CsvHeader Read(IReadOnlyList<string> cells, IReadOnlyList<string> units, int line, UnitGuess guess)
    {
        var named = new List<NamedColumn>();
        var unknown = new List<string>();
        var isShort = CsvNames.AreUsualShortNames(cells);
        for (var i = 0; i < cells.Count; i++)
        {
            var header = cells[i].Trim();
            if (CsvColumn.Meaning(header) is not { } meaning || IsAngle(header, cells) || IsNumber(header, cells))
            {
                unknown.Add(header);
                continue;
            }

            var below = i < units.Count ? CsvColumn.UnitOf(units[i]) : "";
            named.Add(new(i, meaning.Quantity, meaning.Unit ?? (below.Length > 0 ? below : isShort ? CsvNames.UnitOfShortName(header) : null)));
        }

        // The speed of a balloon over the ground is worth no refusal; its wind is left out, and that is said.
        var isMoving = named.Exists(column => column is { Quantity: CsvQuantity.MovingSpeed, Unit: not null });
        var aside = named.FindAll(column => !isMoving && column.Quantity is (CsvQuantity.MovingSpeed or CsvQuantity.MovingDirection));
        unknown.AddRange(aside.Select(column => cells[column.Index].Trim()));
        var guessed = new List<string>();
        var columns = named.Except(aside).Select(column => new CsvColumn(
            column.Index, cells[column.Index].Trim(), column.Quantity, Conversion(column, cells[column.Index].Trim(), named, guess, guessed, line))).ToList();
        return Complete(
            new(columns, cells.Count) { Unknown = [.. unknown.Where(name => name.Length > 0)], Guessed = guessed }, line);
    }

    /// <summary>The column of times, where the table has one.</summary>
    public CsvColumn? Time => Columns.FirstOrDefault(column => column.Quantity == CsvQuantity.Time);

    /// <summary>The column of dates, where date and time stand apart.</summary>
    public CsvColumn? Date => Columns.FirstOrDefault(column => column.Quantity == CsvQuantity.Date);

    public string? HeaderOf(string contractName) => contractName switch
    {
        "pressureHpa" => First(CsvQuantity.Pressure),
        "heightM" => First(CsvQuantity.Height) ?? First(CsvQuantity.HeightAboveGround),
        "temperatureC" => First(CsvQuantity.Temperature),
        "dewPointC" => First(CsvQuantity.DewPoint) ?? First(CsvQuantity.DewPointDepression) ?? First(CsvQuantity.RelativeHumidity)
            ?? First(CsvQuantity.SpecificHumidity) ?? First(CsvQuantity.MixingRatio),
        "windDirectionDeg" => First(CsvQuantity.WindDirection) ?? First(CsvQuantity.WindEastward) ?? First(CsvQuantity.MovingDirection),
        _ => First(CsvQuantity.WindSpeed) ?? First(CsvQuantity.WindNorthward) ?? First(CsvQuantity.MovingSpeed),
    };

    private string? First(CsvQuantity quantity) => Columns.FirstOrDefault(column => column.Quantity == quantity)?.Header;

    // Beside another height, an elevation is the angle at which an aerial looks.
    private static bool IsAngle(string header, IReadOnlyList<string> cells) =>
        header.Equals("elevation", StringComparison.OrdinalIgnoreCase)
        && cells.Any(cell => !cell.Trim().Equals(header, StringComparison.OrdinalIgnoreCase) && CsvColumn.Meaning(cell)?.Quantity == CsvQuantity.Height);

    // Beside a pressure, or a height, a level is its number.
    private static bool IsNumber(string header, IReadOnlyList<string> cells) =>
        header.ToLowerInvariant() is "level" or "lev"
        && cells.Any(cell => cell.Trim().ToLowerInvariant() is not ("level" or "lev") && CsvColumn.Meaning(cell)?.Quantity == CsvQuantity.Pressure);

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

    private static Func<double, double> Conversion(
        NamedColumn column, string header, List<NamedColumn> named, UnitGuess guess, List<string> guessed, int line)
    {
        if (column.Unit is { Length: > 0 } unit)
        {
            return CsvUnits.Conversion(column.Quantity, unit) ?? throw new Origin(line, Field: header).Refuse(
                "unit-unknown", $"the unit \"{unit}\" is not known for this quantity. Write for instance {Example(column.Quantity)}.");
        }

        if (CsvUnits.NeedsNoUnit(column.Quantity) || guess.IsEmpty(column))
        {
            return value => value;
        }

        if (guess.Of(column.Index, column.Quantity, named) is { } told && CsvUnits.Conversion(column.Quantity, told) is { } conversion)
        {
            guessed.Add($"{header}: {CsvUnits.Written(told)}");
            return conversion;
        }

        throw new Origin(line, Field: header).Refuse(
            "unit-missing", $"the column does not name its unit, and its values do not tell. Write for instance {Example(column.Quantity)}.");
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
