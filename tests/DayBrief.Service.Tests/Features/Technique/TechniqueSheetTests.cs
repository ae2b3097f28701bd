using DayBrief.Days;
using DayBrief.Flight.Gliders;
using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.Briefs.Sheet;
using DayBrief.Service.Languages;

namespace DayBrief.Service.Features.Technique;

/// <summary>The technique's A4 page read back: on a board nobody can scroll to a line that lies under another.</summary>
public sealed class TechniqueSheetTests
{
    [Theory]
    [InlineData("en", "feet-and-knots")]
    [InlineData("de", "metric")]
    public void No_group_finds_text_over_text_or_outside_the_page_and_each_has_its_whole_advice(string code, string units)
    {
        var made = RealMorning.Make("broad-post-frontal.txt");
        var reader = Reader.Of(made.Brief.Site, units, Language.Named(code));
        var desk = new TechniqueDesk { Encounters = 64 };
        foreach (var group in Enum.GetValues<Experience>())
        {
            var view = TechniqueView.Now(made.Brief, new() { Experience = group, Glider = GliderClass.Club }, reader.Figures, desk, TestContext.Current.CancellationToken)!;
            var sheet = PrintedSheet.Of(PrintTechnique.Draw(made, view, made.Inputs.PreparedAt, reader));
            Assert.Empty(sheet.Overlaps());
            Assert.Empty(sheet.Outside(margin: 12));
            var printed = string.Concat(sheet.All.Split());
            Assert.All(
                [.. SafetyText.Of(view), .. TechniqueText.Find(view.Facts!), .. TechniqueText.Leave(view.Facts!)],
                line => Assert.Contains(string.Concat(line.Split()), printed, StringComparison.Ordinal));
        }
    }
}
