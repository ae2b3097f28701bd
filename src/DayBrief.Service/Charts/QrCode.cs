using QRCoder;

namespace DayBrief.Service.Charts;

/// <summary>An address as a square code for a camera, drawn as vectors so that it prints sharply at any size.</summary>
/// <remarks>The library's matrix already has the quiet zone of four modules that ISO/IEC 18004 asks for.</remarks>
internal static class QrCode
{
    /// <summary>Draws one with modules of a size, error correction M (15 % may be spoilt).</summary>
    /// <param name="text">What it says.</param>
    /// <param name="module">Side of one module in drawing units; about 1.4 points or more is read from half a metre.</param>
    public static Drawing Draw(string text, double module = 3)
    {
        using var data = QRCodeGenerator.GenerateQrCode(text, QRCodeGenerator.ECCLevel.M);
        var rows = data.ModuleMatrix;
        var side = rows.Count * module;
        var drawing = new Drawing(side, side, "QR code", $"QR code for the address {text}");
        drawing.Rectangle(0, 0, side, side, fill: Ink.Paper);
        for (var row = 0; row < rows.Count; row++)
        {
            foreach (var (from, to) in Runs(rows[row]))
            {
                // A hair of overlap, or some renderers leave white seams between rows.
                var seam = row + 1 < rows.Count ? 0.04 * module : 0;
                drawing.Rectangle(from * module, row * module, (to - from) * module, module + seam, fill: Ink.Black);
            }
        }

        return drawing;
    }

    private static IEnumerable<(int From, int To)> Runs(System.Collections.BitArray row)
    {
        for (var i = 0; i < row.Count; i++)
        {
            var from = i;
            while (i < row.Count && row[i])
                i++;
            if (i > from)
                yield return (from, i);
        }
    }
}
