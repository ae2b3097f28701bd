using System.Xml.Linq;

namespace DayBrief.Service.Charts;

public sealed class SvgWriterTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    [Fact]
    public void Title_and_description_name_the_image_for_those_who_hear_it()
    {
        var svg = Parse(new Drawing(120.5, 80, "A title", "A description"), "pic");
        Assert.Equal("0 0 120.5 80", svg.Attribute("viewBox")!.Value);
        Assert.Equal("img", svg.Attribute("role")!.Value);
        Assert.Equal("pic-t pic-d", svg.Attribute("aria-labelledby")!.Value);
        Assert.Equal(("pic-t", "A title"), Named(svg, "title"));
        Assert.Equal(("pic-d", "A description"), Named(svg, "desc"));
    }

    [Fact]
    public void Text_cannot_break_out_of_its_element()
    {
        const string Hostile = "<script>alert(\"1\" & '2')</script>";
        var drawing = new Drawing(10, 10, Hostile, Hostile);
        drawing.Text(1, 2, Hostile, new TextStyle(11));
        var svg = Parse(drawing, "x");
        Assert.Empty(svg.Descendants(Svg + "script"));
        Assert.Equal(Hostile, svg.Element(Svg + "text")!.Value);
        Assert.Equal(Hostile, svg.Element(Svg + "title")!.Value);
    }

    [Fact]
    public void A_hatched_area_is_one_element_with_all_its_lines()
    {
        var drawing = new Drawing(100, 100, "t", "d");
        drawing.Hatch([new(0, 0), new(100, 0), new(100, 100), new(0, 100)], 10, 0, Stroke.Fine);
        drawing.Line(0, 0, 1, 1, Stroke.Main);
        var paths = Parse(drawing, "x").Elements(Svg + "path").Select(path => path.Attribute("d")!.Value).ToArray();
        Assert.Equal(2, paths.Length);
        Assert.Equal(10, paths[0].Count(c => c == 'M'));  // 100 high, a line every 10
        Assert.Equal("M0 0L1 1", paths[1]);
    }

    [Fact]
    public void Filled_and_edged_areas_keep_their_order()
    {
        var drawing = new Drawing(100, 100, "t", "d");
        drawing.Rectangle(0, 0, 10, 10, Stroke.Fine, Ink.Paper);
        drawing.Rectangle(5, 5, 10, 10, Stroke.Fine, Ink.Paper);
        Assert.Equal(2, Parse(drawing, "x").Elements(Svg + "path").Count());
    }

    [Fact]
    public void A_placed_drawing_is_scaled_with_its_text_and_dashes()
    {
        var inner = new Drawing(10, 10, "", "");
        inner.Line(0, 0, 10, 10, new Stroke(Ink.Black, 2, (4, 2)));
        inner.Text(5, 5, "a", new TextStyle(12));
        var outer = new Drawing(100, 100, "", "");
        outer.Place(inner, 20, 30, 0.5);
        var path = Assert.IsType<PathMark>(outer.Marks[0]);
        Assert.Equal([new(20, 30), new(25, 35)], path.Points);
        Assert.Equal(new Stroke(Ink.Black, 1, (2, 1)), path.Stroke);
        Assert.Equal(6, Assert.IsType<TextMark>(outer.Marks[1]).Style.Size);
    }

    private static XElement Parse(Drawing drawing, string id) => XDocument.Parse(SvgWriter.Write(drawing, id)).Root!;

    private static (string Id, string Text) Named(XElement svg, string name) =>
        (svg.Element(Svg + name)!.Attribute("id")!.Value, svg.Element(Svg + name)!.Value);
}
