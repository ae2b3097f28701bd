using DayBrief.Texts;

namespace DayBrief.Soundings.Formats;

/// <summary>Names content that is often given by mistake, so that the answer can say what to do instead.</summary>
internal static class ForeignContent
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
        ([0x89, 0x48, 0x44, 0x46], Words.Of("an HDF5 or netCDF-4 file")),
        ("CDF"u8.ToArray(), Words.Of("a netCDF file")),
        ("{\\rtf"u8.ToArray(), Words.Of("a rich-text document")),
    ];

    public static InvalidSoundingException Refuse(SoundingInput input)
    {
        object name = (object?)input.Name ?? Words.Of("The input");
        if (Named(input) is { } what)
        {
            return new(new Refusal("foreign-content", $"{name} is {what}, not a sounding. Give the ascent itself: {Formats()}."));
        }

        return input.Text is null
            ? new(new Refusal("binary", $"{name} is binary data that is not a known format. Give the ascent as {Formats()}."))
            : new(new Refusal(
                "not-recognised",
                $"{name} is in no known format; it begins \"{Start(input.Text)}\". Give the ascent as {Formats()}.")
            { Line = 1 });
    }

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

    private static string Start(string text)
    {
        var line = text.Trim().Split('\n', 2)[0].Trim();
        return line.Length <= 40 ? line : string.Concat(line.AsSpan(0, 40), "…");
    }
}
