using DayBrief.Days;
using DayBrief.Service.Charts;
using DayBrief.Service.Languages;

namespace DayBrief.Service.Features.Briefs.Sheet;

/// <summary>The sheet read back from its PDF, on the most crowded real days, in both languages and both systems of units.</summary>
public sealed class BriefSheetTests
{
    private const string Address = "https://segelflug.example.org/fields/crowded";

    /// <summary>Printers leave 6 mm white or less (common practice, no source).</summary>
    private const double Margin = 17;

    public static TheoryData<string, string, string, bool> Cases() => new(
        from day in CrowdedDay.All
        from language in new[] { "en", "de" }
        from units in new[] { "feet-and-knots", "metric" }
        from crowded in new[] { true, false }
        select (day.Name, language, units, crowded));

    [Theory]
    [MemberData(nameof(Cases))]
    public void No_text_lies_over_another_and_none_outside_the_page(string day, string language, string units, bool crowded)
    {
        var (sheet, _, _) = Printed(day, language, units, crowded);
        Assert.Equal((595.3, 841.9), (Math.Round(sheet.Width, 1), Math.Round(sheet.Height, 1)));
        Assert.Empty(sheet.Overlaps());
        Assert.Empty(sheet.Outside(Margin));
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Sentence_and_figures_are_read_from_a_metre_dangers_and_limits_before_the_board(string day, string language, string units, bool crowded)
    {
        var (sheet, made, reader) = Printed(day, language, units, crowded);
        // What decides may be said in fewer clauses where it stands again below; the thermals and the first two never give way.
        var sentence = Enumerable.Range(2, DecidingWords.Most - 1).Select(clauses => sheet.SizesOf(DaySentence.Of(made, reader, clauses))).First(sizes => sizes.Count > 0);
        Assert.True(sentence is [>= 28], $"the sentence is set in {string.Join(", ", sentence)}");
        Assert.All(HeadFigures.Of(made, reader), figure => Assert.Contains(sheet.Texts, text => text.Text == figure.Value && text.Letters[0].PointSize >= 28));
        var first = FirstCautions.Of(made.Brief, reader);
        Assert.Equal(Math.Min(3, Hazards.Ranked(made.Brief).All.Length), first.Worst.Count);
        foreach (var (line, hazard) in first.Worst.Zip(SheetCautions.First(made.Brief)))
        {
            string[] told = [$"{line.Title} {line.Time}: {line.Text}.", $"{line.Title}. {HazardText.Of(hazard.Lead, made.Brief.Site, reader)}"];
            Assert.True(told.Any(text => sheet.SizesOf(text) is [>= 14]), $"“{told[0]}” is not there in 14 pt, or in its title only");
        }

        foreach (var line in first.AlsoSerious)
            Assert.True(sheet.SizesOf($"{line.Title} {line.Time}") is [>= 14], $"“{line.Title} {line.Time}” is not there in 14 pt");
        foreach (var limit in made.Inputs.DayLimits?.Split('\n') ?? [])
            Assert.True(sheet.SizesOf(limit) is [>= 14], $"the limit “{limit}” is not there in 14 pt");
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void The_notes_of_all_three_groups_the_hours_and_six_rows_to_write_in_are_there(string day, string language, string units, bool crowded)
    {
        var (sheet, made, reader) = Printed(day, language, units, crowded);
        foreach (var (title, note) in InstructorNotes.Of(made, reader).Where(note => note.Title != reader["At this field"]))
            Assert.NotEmpty(sheet.SizesOf($"{title}: {note[..20]}"));
        Assert.NotEmpty(sheet.SizesOf(reader["What really happened today"]));
        Assert.NotEmpty(sheet.SizesOf(Address));
        if (made.Brief.Day.Times.FirstUsable is not null)
            Assert.Contains(sheet.Texts, text => text.Text == reader.Say($"Top, {reader.HeightUnit}"));
        var across = HourTable.OfTheSheet(made, reader).Select(hour => hour.Across).Where(across => across != HourTable.Nothing).ToArray();
        if (crowded)
            Assert.True(across.Length >= 3, "the forecast gives a wind for most hours");
        if (across.Length > 0)
            Assert.Contains(sheet.Texts, text => text.Text.EndsWith($", {reader.WindUnit}", StringComparison.Ordinal));
        // Words give way to the picture; only where everything is as long as it can be, it gives way to dangers and limits itself.
        if (!crowded)
            Assert.NotEmpty(sheet.SizesOf(reader.Say($"{reader.HeightUnit} above the field")));
        Assert.Equal(SheetFoot.Rows, Ruled(day, language, units, crowded) - 1);
    }

    /// <summary>The level lines across the strip below its head, and the upper edge of its head.</summary>
    private static int Ruled(string day, string language, string units, bool crowded)
    {
        var (drawing, _, _) = Drawn(day, language, units, crowded);
        var levels = drawing.Marks.OfType<PathMark>()
            .Where(mark => mark.Points.Count == 2 && mark.Points[0].X == SheetSurface.Left && mark.Points[0].Y == mark.Points[1].Y && mark.Points[0].Y > 600)
            .Where(mark => mark.Stroke == Stroke.Fine && mark.Points[1].X < SheetSurface.Right - 60)
            .Select(mark => mark.Points[0].Y).ToArray();
        Assert.All(levels.Skip(1).Zip(levels.Skip(2)), rows => Assert.True(rows.Second - rows.First >= 15, "a hand cannot write in less"));
        return levels.Length - 1;
    }

    private static (PrintedSheet Sheet, MadeBrief Made, Reader Reader) Printed(string day, string language, string units, bool crowded)
    {
        var (drawing, made, reader) = Drawn(day, language, units, crowded);
        if (Environment.GetEnvironmentVariable("DAYBRIEF_SHEETS") is { } folder)
            File.WriteAllBytes(Path.Combine(folder, $"{day}-{language}-{units}-{(crowded ? "crowded" : "plain")}.pdf".Replace(' ', '-')), PdfWriter.Write("t", "t", DateTimeOffset.UnixEpoch, drawing));
        return (PrintedSheet.Of(drawing), made, reader);
    }

    private static (Drawing Drawing, MadeBrief Made, Reader Reader) Drawn(string day, string language, string units, bool crowded)
    {
        var made = CrowdedDay.Named(day).Make(crowded, units);
        var reader = Reader.Of(made.Brief.Site, units, Language.Named(language));
        return (BriefSheet.Draw(made, reader, Address, made.Inputs.PreparedAt), made, reader);
    }
}
