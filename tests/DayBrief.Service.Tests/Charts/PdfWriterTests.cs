using UglyToad.PdfPig;
using UglyToad.PdfPig.Tokens;

namespace DayBrief.Service.Charts;

/// <summary>Read back with an independent PDF library (PdfPig).</summary>
public sealed class PdfWriterTests
{
    private static readonly DateTimeOffset Morning = new(2026, 6, 21, 5, 30, 0, TimeSpan.Zero);

    private static PdfDocument Write(params Drawing[] pages) =>
        PdfDocument.Open(PdfWriter.Write("The day", "Duty instructor", Morning, pages));

    private static Drawing Sheet()
    {
        var page = new Drawing(595, 842, "Sheet", "An A4 page");
        page.Place(DayPicture.Draw(InventedDays.Cumulus), 40, 60, 1.4);
        page.Text(40, 40, "Usable top 5,400 ft – first usable 11:10, −3 °C", new TextStyle(20) { Bold = true });
        return page;
    }

    [Fact]
    public void One_drawing_is_one_page_of_its_size()
    {
        using var pdf = Write(Sheet());
        var page = Assert.Single(pdf.GetPages());
        Assert.Equal((595, 842), (Math.Round(page.Width), Math.Round(page.Height)));
        Assert.Equal("The day", pdf.Information.Title);
    }

    [Fact]
    public void Text_can_be_selected_as_it_was_written()
    {
        using var pdf = Write(Sheet());
        var text = pdf.GetPage(1).Text;
        Assert.Contains("Usable top 5,400 ft – first usable 11:10, −3 °C", text, StringComparison.Ordinal);
        Assert.Contains("usable top 5,400 ft", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Both_fonts_are_embedded()
    {
        using var pdf = Write(Sheet());
        var embedded = pdf.Structure.CrossReferenceTable.ObjectOffsets.Keys
            .Select(reference => pdf.Structure.GetObject(reference).Data)
            .OfType<DictionaryToken>()
            .Where(token => token.ContainsKey(NameToken.FontFile2))
            .Select(token => token.Get<NameToken>(NameToken.FontName, pdf.Structure.TokenScanner).Data)
            .ToArray();
        Assert.Equal(2, embedded.Length);
        Assert.All(embedded, name => Assert.Contains("Source Sans 3", name, StringComparison.Ordinal));
        Assert.Contains(embedded, name => name.Contains("Semi", StringComparison.Ordinal));
    }

    [Fact]
    public void A_line_lies_where_it_was_drawn()
    {
        var drawing = new Drawing(200, 100, "", "");
        drawing.Line(20, 10, 180, 10, Stroke.Main);
        using var pdf = Write(drawing);
        var box = Assert.Single(pdf.GetPage(1).Paths).GetBoundingRectangle()!.Value;
        Assert.Equal(20, box.Left, tolerance: 0.01);
        Assert.Equal(180, box.Right, tolerance: 0.01);
        Assert.Equal(90, box.Bottom, tolerance: 0.01);  // PDF counts from the bottom of the page
    }
}
