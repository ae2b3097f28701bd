namespace DayBrief.Service.Charts;

/// <summary>What every drawing must hold to: it can be read on a phone, and no label hides another.</summary>
internal static class Legible
{
    /// <summary>What the narrowest phone leaves a drawing, px; how large labels are in a browser: ReadabilityTests.</summary>
    private const double NarrowestPhone = 320;

    public static void Check(Drawing drawing)
    {
        var texts = drawing.Marks.OfType<TextMark>().ToArray();
        Assert.NotEmpty(texts);
        Assert.NotEqual("", drawing.Title);
        Assert.True(drawing.Description.Length > 40, "the text alternative says something");
        Assert.All(texts, text => Assert.True(text.Style.Size * (NarrowestPhone / TextStyle.PhoneWidth) >= 12, $"{text.Text} is set in {text.Style.Size}"));
        var rooms = texts.Select(text => (text.Text, Boxes: LabelRoom.Boxes(text.At, text.Text, text.Style))).ToArray();
        Assert.All(rooms, room => Assert.All(room.Boxes, box => Assert.True(
            box.Left >= -1.01 && box.Right <= drawing.Width + 1.01 && box.Top >= -2 && box.Bottom <= drawing.Height + 2,
            $"{room.Text} leaves the drawing: {box}")));
        for (var i = 0; i < rooms.Length; i++)
        {
            for (var k = i + 1; k < rooms.Length; k++)
                Assert.False(Overlap(rooms[i].Boxes, rooms[k].Boxes), $"“{rooms[i].Text}” and “{rooms[k].Text}” overlap");
        }
    }

    /// <summary>A unit of tolerance: the boxes hold some air around the letters.</summary>
    private static bool Overlap(Frame[] a, Frame[] b) => a.Any(one => b.Any(other =>
        one.Left + 1 < other.Right && other.Left + 1 < one.Right && one.Top + 1 < other.Bottom && other.Top + 1 < one.Bottom));
}
