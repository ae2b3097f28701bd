using System.Text.RegularExpressions;
using DayBrief.Texts;

namespace DayBrief.Soundings.Formats;

/// <summary>Names content that is often given by mistake, so that the answer can say what to do instead.</summary>
internal static partial class ForeignContent
{
    private static readonly (byte[] Start, Words What)[] Magic =
    [
        ("%PDF"u8.ToArray(), Words.Of("a PDF")),
        ([0x50, 0x4B, 0x03, 0x04], Words.Of("a ZIP archive or an office document")),
        ([0x1F, 0x8B], Words.Of("a gzip archive")),
        ([0x89, 0x50, 0x4E, 0x47], Words.Of("a PNG picture")),
        ([0xFF, 0xD8, 0xFF], Words.Of("a JPEG picture")),
        ("GIF8"u8.ToArray(), Words.Of("a GIF picture")),
        ("GRIB"u8.ToArray(), Words.Of("a GRIB file (gridded model output)")),
        ([0x89, 0x48, 0x44, 0x46], Words.Of("an HDF5 or netCDF-4 file (write one profile of it as CSV: time, pressure, temperature, humidity)")),
        ("CDF"u8.ToArray(), Words.Of("a netCDF file (write one profile of it as CSV: time, pressure, temperature, humidity)")),
        ("{\\rtf"u8.ToArray(), Words.Of("a rich-text document")),
    ];

    public static InvalidSoundingException Refuse(SoundingInput input)
    {
        object name = (object?)input.Name ?? Words.Of("The input");
        if (Named(input) is { } what)
        {
            return new(new Refusal("foreign-content", $"{name} is {what}, not a sounding. Give the ascent itself: {Formats()}."));
        }

        if (input.Plain is not { } text)
        {
            return new(new Refusal("binary", $"{name} is binary data that is not a known format. Give the ascent as {Formats()}."));
        }

        if (WindsAloft().IsMatch(text))
        {
            return new(new Refusal("wind-only", "This is a forecast of winds aloft: its temperatures are too far apart for an ascent, and it holds no dew point. Give an ascent; winds aloft can be typed beside it."));
        }

        return NearestForm.Of(text) is var (why, line)
            ? new(new Refusal("not-recognised", $"{name} is in no known format. {why} Known are {Formats()}.") { Line = line })
            : new(new Refusal(
                "not-recognised",
                $"{name} is in no known format; it begins \"{NearestForm.Beginning(text)}\". Give the ascent as {Formats()}.")
            { Line = 1 });
    }

    /// <summary>[FAA28] winds and temperatures aloft: a line of heights in feet, then stations with groups of four figures.</summary>
    [GeneratedRegex(@"^[ \t]*FT[ \t]+(?:[0-9]{4,5}[ \t]+){2,}", RegexOptions.Multiline)]
    private static partial Regex WindsAloft();

    private static Words? Named(SoundingInput input)
    {
        foreach (var (start, what) in Magic)
        {
            if (input.Bytes.Span.StartsWith(start))
            {
                return what;
            }
        }

        var text = input.Text.AsSpan().TrimStart();
        return text.StartsWith("<") ? Words.Of("a web page or XML")
            : text.StartsWith("METAR ") || text.StartsWith("SPECI ") || text.StartsWith("TAF ") ? Words.Of("an aerodrome report or forecast")
            : text.StartsWith("XXAA ") || text.StartsWith("XXBB ") ? Words.Of("a dropsonde report (FM 37)")
            : null;
    }

    private static string Formats() => string.Join(", ", SoundingFormats.All.Select(format => format.Description.Name));
}
