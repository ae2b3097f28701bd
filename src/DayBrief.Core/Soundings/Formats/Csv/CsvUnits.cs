using DayBrief.Units;

namespace DayBrief.Soundings.Formats.Csv;

/// <summary>Units that a header may name, in lower case without separators, and their way to hPa, m, °C, degrees, m/s
/// and per cent. Exact factors [SI].</summary>
internal static class CsvUnits
{
    private static readonly Dictionary<string, Func<double, double>> Pressure = Spelled(
        (1, "hpa mb mbar mbars millibar millibars hektopascal"), (0.01, "pa"), (10, "kpa"));

    private static readonly Dictionary<string, Func<double, double>> Length = Spelled(
        (1, "m metre metres meter meters gpm mamsl mmsl magl mgpm"), (0.3048, "ft feet ftamsl ftagl ftmsl"), (1000, "km"), (10, "dam gpdm"));

    private static readonly Dictionary<string, Func<double, double>> Difference = Spelled(
        (1, "c degc celsius degcelsius k kelvin kelvins degk"), (5.0 / 9, "f degf"));

    private static readonly Dictionary<string, Func<double, double>> Speed = Spelled(
        (1, "ms mps ms1 msec metrespersecond meterspersecond"),
        (Units.Speed.MetresPerSecondPerKnot, "kt kts kn knot knots kn1"),
        (1 / 3.6, "kmh kph kmh1"),
        (0.44704, "mph"));

    private static readonly Dictionary<string, Func<double, double>> Scale = new()
    {
        ["c"] = value => value,
        ["degc"] = value => value,
        ["celsius"] = value => value,
        ["degcelsius"] = value => value,
        ["kelvins"] = value => value - Temperature.ZeroCelsius,
        ["k"] = value => value - Temperature.ZeroCelsius,
        ["degk"] = value => value - Temperature.ZeroCelsius,
        ["kelvin"] = value => value - Temperature.ZeroCelsius,
        ["f"] = value => (value - 32) / 1.8,
        ["degf"] = value => (value - 32) / 1.8,
    };

    private static readonly Dictionary<string, Func<double, double>> Degrees = Spelled((1, "deg degrees degree degtrue degt true grad degnorth degeast degn dege"));

    private static readonly Dictionary<string, Func<double, double>> Percent = Spelled((1, "pct percent per cent prozent"), (100, "1 fraction"));

    private static readonly Dictionary<string, Func<double, double>> MassFraction = Spelled(
        (0.001, "gkg gkg1 gperkg gkgm1"), (1, "kgkg kgkg1 kgperkg"));

    private static readonly Dictionary<string, Func<double, double>> Zone = Spelled((1, "utc gmt"));

    public static bool IsUnit(string text) =>
        new[] { Pressure, Length, Difference, Speed, Degrees, Percent, MassFraction, Zone }.Any(units => units.ContainsKey(text));

    /// <summary>Null if the quantity is not measured in this unit.</summary>
    public static Func<double, double>? Conversion(CsvQuantity quantity, string unit) =>
        Of(quantity).TryGetValue(unit, out var conversion) ? conversion : null;

    /// <summary>What is always in degrees, and a time.</summary>
    public static bool NeedsNoUnit(CsvQuantity quantity) => quantity is CsvQuantity.WindDirection or CsvQuantity.MovingDirection
        or CsvQuantity.Time or CsvQuantity.Date or CsvQuantity.Latitude or CsvQuantity.Longitude;

    /// <summary>A unit as one writes it.</summary>
    public static string Written(string unit) => unit switch
    {
        "hpa" => "hPa",
        "pa" => "Pa",
        "kpa" => "kPa",
        "c" => "°C",
        "f" => "°F",
        "k" => "K",
        "pct" => "%",
        "fraction" => "1",
        "gkg" => "g/kg",
        "kgkg" => "kg/kg",
        _ => unit,
    };

    private static Dictionary<string, Func<double, double>> Of(CsvQuantity quantity) => quantity switch
    {
        CsvQuantity.Pressure => Pressure,
        CsvQuantity.Height or CsvQuantity.HeightAboveGround => Length,
        CsvQuantity.Temperature or CsvQuantity.DewPoint => Scale,
        CsvQuantity.DewPointDepression => Difference,
        CsvQuantity.RelativeHumidity => Percent,
        CsvQuantity.SpecificHumidity or CsvQuantity.MixingRatio => MassFraction,
        CsvQuantity.WindDirection or CsvQuantity.MovingDirection or CsvQuantity.Latitude or CsvQuantity.Longitude => Degrees,
        CsvQuantity.Time or CsvQuantity.Date => Zone,
        _ => Speed,
    };

    private static Dictionary<string, Func<double, double>> Spelled(params (double Factor, string Names)[] rows) =>
        rows.SelectMany(row => row.Names.Split(' ').Select(name => (name, row.Factor)))
            .ToDictionary(pair => pair.name, pair => (Func<double, double>)(value => value * pair.Factor));
}
