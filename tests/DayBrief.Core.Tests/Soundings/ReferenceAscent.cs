using System.Globalization;
using System.Text.Json;
using DayBrief.House;
using DayBrief.Units;

namespace DayBrief.Soundings;

/// <summary>One real ascent of the reference data: its independent decode (CSV) and the values of a general-purpose
/// meteorological library (JSON). Read here by plain splitting, so that these checks do not rest on our own readers.</summary>
internal sealed class ReferenceAscent
{
    private ReferenceAscent(Sounding sounding, JsonElement values)
    {
        Sounding = sounding;
        Values = values;
    }

    /// <summary>All ascents of the reference data, by id.</summary>
    public static TheoryData<string> Ids =>
    [
        "bufr_altenstadt_20250223_10z", "bufr_idar_20150712_05z", "bufr_praha_20071120_12z",
        "fm35_albany_dd19_12z", "fm35_jackson_20060922_12z", "fm35_saopaulo_20230223_12z", "fm35_sterling_20261006_12z",
        "igra_goteborg_20180101_00z", "igra_norman_20130520_12z", "igra_norman_20130520_17z",
        "json_norman_20110414_18z", "txt_boise_20101209_12z", "txt_norman_20110522_12z",
    ];

    public Sounding Sounding { get; }

    public JsonElement Values { get; }

    public Altitude Elevation => Altitude.FromMetres(Values.GetProperty("elevation_m").GetDouble());

    public static ReferenceAscent Load(string id)
    {
        var rows = File.ReadAllLines(Repository.Shared("soundings", "csv", id + ".csv")).Skip(1).Select(line => line.Split(','));
        var values = JsonDocument.Parse(File.ReadAllText(Repository.Shared("soundings", "reference", id + ".json"))).RootElement;
        return new(
            new Sounding
            {
                Source = new SoundingSource { Format = "reference" },
                Levels = [.. rows.GroupBy(cells => cells[0]).Select(same => Level(same.MaxBy(cells => cells[2].Length)!))],
            },
            values);
    }

    private static SoundingLevel Level(string[] cells) => new()
    {
        Pressure = Pressure.FromHectopascals(Number(cells[0])!.Value),
        Temperature = Number(cells[2]) is { } t ? Temperature.FromCelsius(t) : null,
        DewPoint = Number(cells[3]) is { } d ? Temperature.FromCelsius(d) : null,
    };

    private static double? Number(string cell) => cell.Length == 0 ? null : double.Parse(cell, CultureInfo.InvariantCulture);
}
