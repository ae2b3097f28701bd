using DayBrief.Soundings.Quality;

namespace DayBrief.Soundings.Formats.Csv;

/// <summary>A column whose quantity is known; the unit null where the header names none.</summary>
internal sealed record NamedColumn(int Index, CsvQuantity Quantity, string? Unit);

/// <summary>The unit of a column that names none, where its values leave one reading possible; where they leave two, there is no
/// answer and the unit is asked for.</summary>
/// <remarks>Pressures of hPa, Pa and kPa differ by powers of ten. Heights are compared with the standard atmosphere [ICAO7488] at
/// the pressures beside them: m, ft and km differ by more than weather does (15 %). Temperatures above 150 are kelvins; °C and °F are
/// told apart by the fall of temperature over at least 3 km, which in the troposphere is 4 to 9.2 °C/km ([ICAO7488]: 6.5) and would be
/// 1.8 times more or less in the other. Wind speeds are never guessed.</remarks>
internal sealed class UnitGuess(IReadOnlyList<string[]> rows, bool decimalComma)
{
    private const double LeastSpanM = 3000;
    private const double MostSpanM = 8000;

    private static readonly string[] Lengths = ["m", "ft", "km"];
    private static readonly string[] Scales = ["c", "f"];

    /// <summary>Whether a column holds no value, so that its unit does not matter; no pressure is 0 or less.</summary>
    public bool IsEmpty(NamedColumn column) =>
        !Column(column.Index).OfType<double>().Any(value => value > 0 || column.Quantity != CsvQuantity.Pressure);

    /// <summary>Null where it stays open.</summary>
    public string? Of(int index, CsvQuantity quantity, IReadOnlyList<NamedColumn> columns)
    {
        var values = Column(index);
        var known = values.OfType<double>().Where(value => value > 0 || quantity != CsvQuantity.Pressure).ToList();
        if (known.Count == 0)
        {
            return null;
        }

        return quantity switch
        {
            CsvQuantity.Pressure => known.Max() switch { > 300 and < 1100 => "hpa", > 30_000 and < 110_000 => "pa", > 30 and < 110 => "kpa", _ => null },
            CsvQuantity.Height => Height(values, columns),
            CsvQuantity.Temperature => Temperature(values, columns),
            CsvQuantity.DewPoint => Find(columns, CsvQuantity.Temperature) is { } temperature
                ? temperature.Unit ?? Of(temperature.Index, CsvQuantity.Temperature, columns)
                : null,
            CsvQuantity.RelativeHumidity => known.Min() < 0 || known.Max() > 110 ? null : known.Max() > 1.5 ? "pct" : "fraction",
            CsvQuantity.MixingRatio or CsvQuantity.SpecificHumidity => known.Max() > 0.1 ? "gkg" : "kgkg",
            _ => null,
        };
    }

    private string? Height(double?[] values, IReadOnlyList<NamedColumn> columns)
    {
        if (Pressures(columns) is not { } hpa)
        {
            return Together(values, columns)?.Height;
        }

        var both = values.Zip(hpa).Where(pair => pair.First is not null && pair.Second is > 100 and < 1100).ToList();
        if (both.Count < 3 || Standard(both[^1].Second!.Value) - Standard(both[0].Second!.Value) is var rise && Math.Abs(rise) < 500)
        {
            return null;
        }

        var ratio = (both[^1].First!.Value - both[0].First!.Value) / rise;
        return Lengths.FirstOrDefault(unit => Math.Abs((ratio * CsvUnits.Conversion(CsvQuantity.Height, unit)!(1)) - 1) < 0.15);
    }

    private string? Temperature(double?[] values, IReadOnlyList<NamedColumn> columns)
    {
        if (values.OfType<double>().Min() > 150)
        {
            return "k";
        }

        var height = Find(columns, CsvQuantity.Height);
        double?[]? metres = height is { Unit: { } unit } && CsvUnits.Conversion(CsvQuantity.Height, unit) is { } convert
            ? [.. Column(height.Index).Select(value => value is { } number ? convert(number) : (double?)null)]
            : Pressures(columns) is { } hpa ? [.. hpa.Select(value => value is > 100 and < 1100 ? Standard(value.Value) : (double?)null)] : null;
        return metres is null ? Together(values, columns)?.Temperature : Only(Scales.Where(scale => Falls(metres, values, scale)));
    }

    /// <summary>Height and temperature without units and without pressures: the one pair that makes an atmosphere.</summary>
    private (string Height, string Temperature)? Together(double?[] values, IReadOnlyList<NamedColumn> columns)
    {
        if (Find(columns, CsvQuantity.Height) is not { } height || Find(columns, CsvQuantity.Temperature) is not { } temperature || values.Length == 0)
        {
            return null;
        }

        var (heights, celsius) = (Column(height.Index), Column(temperature.Index));
        var possible = (from unit in height.Unit is { } named ? [named] : Lengths
                        from scale in temperature.Unit is { } given ? [given] : celsius.OfType<double>().DefaultIfEmpty().Min() > 150 ? ["k"] : Scales
                        let convert = CsvUnits.Conversion(CsvQuantity.Height, unit)
                        where convert is not null
                        let metres = heights.Select(value => value is { } number ? convert(number) : (double?)null).ToArray()
                        where metres.OfType<double>().DefaultIfEmpty().Max() < 60_000 && Falls(metres, celsius, scale)
                        select (unit, scale)).ToList();
        return possible.Count == 1 ? possible[0] : null;
    }

    private static bool Falls(double?[] metres, double?[] values, string scale)
    {
        if (CsvUnits.Conversion(CsvQuantity.Temperature, scale) is not { } toCelsius)
        {
            return false;
        }

        var both = metres.Zip(values).Where(pair => pair is { First: not null, Second: not null })
            .Select(pair => (Metres: pair.First!.Value, Celsius: toCelsius(pair.Second!.Value))).OrderBy(pair => pair.Metres).ToList();
        var low = both.Count > 0 ? both[0] : default;
        var high = both.LastOrDefault(pair => pair.Metres <= low.Metres + MostSpanM);
        var span = high.Metres - low.Metres;
        return both.Count > 3 && span >= LeastSpanM && low.Metres is > -500 and < 6000 && low.Celsius is > -60 and < 56
            && (low.Celsius - high.Celsius) / span * 1000 is >= 4 and <= 9.2;
    }

    private double?[]? Pressures(IReadOnlyList<NamedColumn> columns)
    {
        if (Find(columns, CsvQuantity.Pressure) is not { } column)
        {
            return null;
        }

        var unit = column.Unit ?? Of(column.Index, CsvQuantity.Pressure, columns);
        return unit is not null && CsvUnits.Conversion(CsvQuantity.Pressure, unit) is { } convert
            ? [.. Column(column.Index).Select(value => value is { } number ? convert(number) : (double?)null)]
            : null;
    }

    private static NamedColumn? Find(IReadOnlyList<NamedColumn> columns, CsvQuantity quantity) =>
        columns.FirstOrDefault(column => column.Quantity == quantity);

    private double?[] Column(int index) =>
        [.. rows.Select(row => index < row.Length && CsvNumber.TryRead(row[index], decimalComma, out var value) ? value : null)];

    private static double Standard(double hpa) => StandardAtmosphere.HeightM(hpa);

    private static string? Only(IEnumerable<string> possible) => possible.ToList() is [var one] ? one : null;
}
