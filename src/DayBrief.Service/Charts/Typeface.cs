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

    /// <summary>Breaks a text into lines no wider than a width.</summary>
    public static IReadOnlyList<string> Wrap(string text, double width, double size, bool bold = false) =>
        [.. Flow(text, width, size, bold).Select(line => line.Text).Where(line => line.Length > 0)];

    /// <summary>The same with where each line begins: the first may be indented. A word that is wider than a line is broken.</summary>
    public static IEnumerable<(string Text, double Start)> Flow(string text, double width, double size, bool bold = false, double indent = 0)
    {
        var (line, start) = ("", indent);
        foreach (var word in text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).SelectMany(word => Pieces(word, width, size, bold)))
        {
            var longer = line.Length == 0 ? word : $"{line} {word}";
            if (start + WidthOf(longer, size, bold) <= width || (line.Length == 0 && start == 0))
            {
                line = longer;
                continue;
            }

            yield return (line, start);
            (line, start) = (word, 0);
        }

        yield return (line, start);
    }

    /// <summary>A word as it fits into a line: whole, else in as many pieces as it takes.</summary>
    private static IEnumerable<string> Pieces(string word, double width, double size, bool bold)
    {
        while (WidthOf(word, size, bold) > width && word.Length > 1)
        {
            var length = word.Length - 1;
            while (length > 1 && WidthOf(word[..length], size, bold) > width)
                length--;
            // Not between the halves of one character.
            length = length > 1 && char.IsHighSurrogate(word[length - 1]) ? length - 1 : length;
            yield return word[..length];
            word = word[length..];
        }

        yield return word;
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
