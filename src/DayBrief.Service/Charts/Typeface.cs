using System.Reflection;
using PdfSharp.Drawing;
using PdfSharp.Fonts;

namespace DayBrief.Service.Charts;

/// <summary>The one type family of pages, sheets and drawings: Source Sans 3 (SIL Open Font License), embedded.</summary>
internal static class Typeface
{
    private const string Family = "Source Sans 3";

    private static readonly Lazy<XGraphics> Measure = new(() =>
    {
        Register();
        return XGraphics.CreateMeasureContext(new XSize(1000, 1000), XGraphicsUnit.Point, XPageDirection.Downwards);
    });

    private static readonly Lock MeasureLock = new();

    /// <summary>Makes the embedded fonts known to the PDF library. Idempotent.</summary>
    public static void Register() => GlobalFontSettings.FontResolver ??= new Embedded();

    public static XFont Font(double size, bool bold) =>
        new(Family, size, bold ? XFontStyleEx.Bold : XFontStyleEx.Regular);

    /// <summary>Width of a text in drawing units.</summary>
    public static double WidthOf(string text, double size, bool bold = false)
    {
        lock (MeasureLock)
            return Measure.Value.MeasureString(text, Font(size, bold)).Width;
    }

    /// <summary>Breaks a text into lines no wider than a width; a longer word stands alone.</summary>
    public static IReadOnlyList<string> Wrap(string text, double width, double size, bool bold = false)
    {
        var lines = new List<string>();
        var line = "";
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var longer = line.Length == 0 ? word : $"{line} {word}";
            if (line.Length > 0 && WidthOf(longer, size, bold) > width)
            {
                lines.Add(line);
                line = word;
            }
            else
            {
                line = longer;
            }
        }

        return line.Length > 0 ? [.. lines, line] : lines;
    }

    private sealed class Embedded : IFontResolver
    {
        public FontResolverInfo? ResolveTypeface(string familyName, bool isBold, bool isItalic) =>
            new(isBold ? "SourceSans3-SemiBold" : "SourceSans3-Regular");

        public byte[]? GetFont(string faceName)
        {
            using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(faceName)
                ?? throw new InvalidOperationException($"Font {faceName} is not embedded.");
            var bytes = new byte[stream.Length];
            stream.ReadExactly(bytes);
            return bytes;
        }
    }
}
