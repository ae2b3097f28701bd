using DayBrief.Days;
using DayBrief.Service.Charts;

namespace DayBrief.Service.Features.Briefs;

/// <summary>Lower half of the sheet, three columns: wind by height, facts, cautions.</summary>
internal static class SheetLower
{
    private const double Size = 10.5;
    private const double Gap = 18;
    private const double WindWidth = 112;
    private const double FactWidth = 158;
    private const double RowHeight = 13;
    private const double HeadHeight = 31;

    /// <summary>What cautions in full may take, so that the day's picture above keeps its height.</summary>
    private const double MostCautions = 150;

    private const double FactLeft = SheetSurface.Left + WindWidth + Gap;
    private const double CautionLeft = FactLeft + FactWidth + Gap;
    private const double CautionWidth = SheetSurface.Right - CautionLeft;

    /// <param name="made">The brief.</param>
    /// <param name="reader">Who reads.</param>
    /// <param name="room">What it may take at most; cautions that do not fit are named only.</param>
    public static double HeightOf(MadeBrief made, Reader reader, double room)
    {
        var winds = WindTable.Rows(made.Brief, reader).Count * RowHeight;
        var facts = Facts(made, reader).Sum(fact => 2 + SheetSurface.ColumnHeight(FactWidth, Size, fact.Value, fact.Name));
        var cautions = Cautions(made, reader, room).Sum(Taken);
        return HeadHeight + Math.Max(winds, Math.Max(facts, cautions));
    }

    public static void Draw(SheetSurface sheet, MadeBrief made, Reader reader, double y, double room)
    {
        Heading(sheet, SheetSurface.Left, y, WindWidth, reader["Wind this morning"]);
        Heading(sheet, FactLeft, y, FactWidth, reader["Field and air"]);
        Heading(sheet, CautionLeft, y, CautionWidth, reader["Cautions"]);
        DrawWinds(sheet, made.Brief, reader, y + HeadHeight);
        var line = y + HeadHeight;
        foreach (var fact in Facts(made, reader))
            line = sheet.Column(FactLeft, line, FactWidth, Size, fact.Value, fact.Name) + 2;
        line = y + HeadHeight;
        foreach (var (title, text) in Cautions(made, reader, room))
            line = sheet.Column(CautionLeft, line, CautionWidth, Size, text, title) + 3;
    }

    private static void Heading(SheetSurface sheet, double x, double y, double width, string text)
    {
        sheet.Drawing.Line(x, y, x + width, y, new Stroke(Ink.Black, 1));
        sheet.Drawing.Text(x, y + 14, text, new TextStyle(11.5) { Bold = true });
    }

    private static void DrawWinds(SheetSurface sheet, Brief brief, Reader reader, double y)
    {
        foreach (var (height, wind) in WindTable.Rows(brief, reader))
        {
            sheet.Drawing.Text(SheetSurface.Left + 46, y, height.Metres < 20 ? reader["ground"] : reader.Height(height.Metres), new TextStyle(Size) { Anchor = Anchor.End });
            sheet.Drawing.Text(SheetSurface.Left + 54, y, wind is { } known ? reader.Wind(known) : reader["not known"], new TextStyle(Size) { Bold = true });
            y += RowHeight;
        }
    }

    private static IEnumerable<Fact> Facts(MadeBrief made, Reader reader) => BriefFacts.Of(made, reader);

    /// <summary>The most serious in full as far as they fit, the others by name: the brief has them all.</summary>
    private static IEnumerable<(string Title, string Text)> Cautions(MadeBrief made, Reader reader, double room)
    {
        var hazards = Hazards.Of(made.Brief);
        var always = (
            Title: reader["Always:"],
            Text: $"{reader["look out, join as the first glider circles, choose a field early."]} "
                + reader[hazards.Count == 0 ? "The figures give no cause for a special caution." : "Local rules and the instructor in charge come first."]);
        // Two lines of names, should not all fit.
        var most = Math.Min(MostCautions, room - HeadHeight - Taken(always) - (2 * 1.22 * Size) - 3);
        var (height, told) = (0.0, 0);
        foreach (var hazard in hazards)
        {
            var caution = ($"{HazardText.Title(hazard, reader)}.", HazardText.Of(hazard, made.Brief.Site, reader));
            height += Taken(caution);
            if (told > 0 && height > most)
                break;
            told++;
            yield return caution;
        }

        if (told < hazards.Count)
            yield return (reader["Also, see the brief:"], string.Join(", ", hazards.Skip(told).Select(hazard => HazardText.Title(hazard, reader)).Distinct()) + ".");
        yield return always;
    }

    private static double Taken((string Title, string Text) caution) =>
        3 + SheetSurface.ColumnHeight(CautionWidth, Size, caution.Text, caution.Title);
}
