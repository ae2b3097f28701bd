using System.Text.Json;
using DayBrief.House;

namespace DayBrief.Reports;

/// <summary>Real reports with the decodes of two independent programs and, where those differ, a ruling
/// (shared/soundings/metar_taf.json, which names programs and sources).</summary>
internal static class SharedReports
{
    public static JsonElement[] Of(string kind)
    {
        using var document = JsonDocument.Parse(File.ReadAllText(Repository.Shared("soundings", "metar_taf.json")));
        return [.. document.RootElement.GetProperty(kind).EnumerateArray().Select(entry => entry.Clone())];
    }

    public static JsonElement Decode(this JsonElement report) => report.GetProperty("decode_npm_metar_taf_parser_9_1_3");

    public static double? Number(this JsonElement element, string name) =>
        element.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.Number ? value.GetDouble() : null;

    public static string? String(this JsonElement element, string name) =>
        element.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.String ? value.GetString() : null;

    public static bool Flag(this JsonElement element, string name) =>
        element.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.True;

    /// <summary>Amount, base in feet and type of each layer, in the words of the decodes.</summary>
    public static string[] Clouds(this JsonElement element) =>
    [
        .. element.GetProperty("clouds").EnumerateArray()
            .Select(cloud => $"{cloud.String("amount")} {cloud.Number("base_ft"):0} {cloud.String("type")}"),
    ];

    public static string[] Clouds(IEnumerable<CloudLayer> layers) =>
    [
        .. layers.Select(layer => $"{Code(layer.Amount)} {layer.Base?.Feet:0} {Code(layer.Convective)}"),
    ];

    public static string[] Weather(this JsonElement element) =>
        [.. element.GetProperty("weather").EnumerateArray().Select(code => code.GetString()!)];

    private static string Code(CloudAmount amount) => amount switch
    {
        CloudAmount.Few => "FEW",
        CloudAmount.Scattered => "SCT",
        CloudAmount.Broken => "BKN",
        CloudAmount.Overcast => "OVC",
        CloudAmount.Clear => "SKC",
        CloudAmount.NilSignificant => "NSC",
        CloudAmount.NoneDetected => "NCD",
        _ => "///",
    };

    private static string Code(ConvectiveCloud? cloud) => cloud switch
    {
        ConvectiveCloud.Cumulonimbus => "CB",
        ConvectiveCloud.ToweringCumulus => "TCU",
        _ => "",
    };
}
