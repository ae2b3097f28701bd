using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace DayBrief.Service.Infrastructure;

/// <summary>How the program writes and reads JSON, everywhere the same.</summary>
internal static class Json
{
    /// <summary>One line, for the API and for lines of results.</summary>
    public static JsonSerializerOptions Line { get; } = Configure(new JsonSerializerOptions(JsonSerializerDefaults.Web));

    /// <summary>For people to read.</summary>
    public static JsonSerializerOptions Indented { get; } = new(Line) { WriteIndented = true };

    public static JsonSerializerOptions Configure(JsonSerializerOptions options)
    {
        options.Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping;
        options.Converters.Add(new JsonStringEnumConverter(JsonNamingPolicy.KebabCaseLower));
        options.NumberHandling = JsonNumberHandling.Strict;
        return options;
    }

    /// <summary>A number as it is published: rounded, and null instead of what no reader could use.</summary>
    public static double? Rounded(double? value, int decimals) =>
        value is { } number && double.IsFinite(number) ? Math.Round(number, decimals, MidpointRounding.AwayFromZero) : null;
}
