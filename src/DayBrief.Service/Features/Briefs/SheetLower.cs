using DayBrief.Service.Charts;

namespace DayBrief.Service.Features.Briefs;

/// <summary>Wind by height, then two columns: field and air, and the cautions that do not stand above.</summary>
internal static class SheetLower
{
    private const double Size = 10;
    private const double Lead = 1.16;
    private const double Gap = 18;
    private const double HeadHeight = 17;
    private const double FactWidth = 244;

    private const double CautionLeft = SheetSurface.Left + FactWidth + Gap;
    private const double CautionWidth = SheetSurface.Right - CautionLeft;

    public static SheetBlock Winds(SheetOrder order)
    {
        var (reader, rows) = (order.Reader, WindTable.Rows(order.Made.Brief, order.Reader));
        var name = order.Made.Brief.AscentValidAt is { } at ? reader.Say($"Wind, ascent {reader.Time(at)}") : reader["Wind of the ascent"];
        return rows.All(row => row.Wind is null)
            ? SheetTable.Of([(name, [reader["not known"]])])
            : SheetTable.Of(
            [
                (name, [.. rows.Select(row => row.Height.Metres < 20 ? reader["ground"] : reader.Height(row.Height.Metres))]),
                ("", [.. rows.Select(row => row.Wind is { } known ? reader.Wind(known) : HourTable.Nothing)]),
            ]);
    }

    public static SheetBlock Columns(SheetOrder order, SheetSqueeze squeeze)
    {
        var reader = order.Reader;
        var facts = BriefFacts.OfTheSheet(order.Made, reader).Take(squeeze.Facts)
            .Select(fact => new SetText(fact.Value, FactWidth, Size, fact.Name, Lead)).ToArray();
        var cautions = Cautions(order, squeeze).ToArray();
        return new(HeadHeight + Math.Max(Taken(facts), Taken(cautions)) + 4, (drawing, top) =>
        {
            Heading(drawing, SheetSurface.Left, top, FactWidth, reader["Field and air"]);
            Heading(drawing, CautionLeft, top, CautionWidth, reader["Other cautions"]);
            DrawTexts(drawing, facts, SheetSurface.Left, top + HeadHeight);
            DrawTexts(drawing, cautions, CautionLeft, top + HeadHeight);
        });
    }

    /// <summary>The same in as few lines as it takes.</summary>
    public static SheetBlock Lines(SheetOrder order, SheetSqueeze squeeze)
    {
        var reader = order.Reader;
        var facts = BriefFacts.OfTheSheet(order.Made, reader).Take(squeeze.Facts).Select(fact => $"{fact.Name} {fact.Value}").ToArray();
        var told = new SetText($"{string.Join("; ", facts)}.", SheetSurface.Inner, Size, lead: Lead);
        return SheetBlock.Of([.. facts.Length > 0 ? new[] { told } : [], .. Named(order, SheetSurface.Inner, squeeze.OtherLines)], gap: 1, after: 3);
    }

    private static IEnumerable<SetText> Named(SheetOrder order, double width, int most)
    {
        var names = SheetCautions.Others(order.Made.Brief).Select(caution => HazardText.Title(caution.Kind, order.Reader)).ToArray();
        if (names.Length > 0)
            yield return new(string.Join(", ", names) + ".", width, Size, order.Reader["Also, see the brief:"], Lead, most);
    }

    private static double Taken(SetText[] texts) => texts.Sum(text => text.Height + 1.5);

    private static void Heading(Drawing drawing, double x, double y, double width, string text)
    {
        drawing.Line(x, y, x + width, y, new Stroke(Ink.Black, 1));
        drawing.Text(x, y + 12.5, text, new TextStyle(10.5) { Bold = true });
    }

    private static void DrawTexts(Drawing drawing, SetText[] texts, double x, double y)
    {
        foreach (var text in texts)
        {
            text.Draw(drawing, x, y);
            y += text.Height + 1.5;
        }
    }

    private static IEnumerable<SetText> Cautions(SheetOrder order, SheetSqueeze squeeze)
    {
        var (reader, site) = (order.Reader, order.Made.Brief.Site);
        var others = SheetCautions.Others(order.Made.Brief);
        if (squeeze.OtherSentences > 0)
        {
            foreach (var caution in others)
                yield return new(SheetCautions.Sentences(HazardText.Of(caution.Lead, site, reader), squeeze.OtherSentences), CautionWidth, Size, $"{HazardText.Title(caution.Kind, reader)}.", Lead);
        }
        else
        {
            foreach (var names in Named(order, CautionWidth, int.MaxValue))
                yield return names;
        }

        yield return new(
            $"{reader["look out, join as the first glider circles, choose a field early."]} {reader["Local rules and the instructor in charge come first."]}",
            CautionWidth, Size, reader["Always:"], Lead);
    }
}
