using DayBrief.Service.Features.Arrivals;
using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Features.Soundings;

namespace DayBrief.Service.Features.Automation.Work;

/// <summary>What goes with age, and what stays.</summary>
public sealed class PurgeOldTests
{
    private static readonly DateTimeOffset Then = new(2026, 1, 10, 5, 0, 0, TimeSpan.Zero);

    [Fact]
    public void Old_reports_and_ascents_go_and_an_ascent_that_a_brief_uses_stays()
    {
        using var rig = new AutomationRig(Then);
        var soundings = rig.Get<SoundingStore>();
        var used = soundings.Save(File.ReadAllBytes(Demo.Path("anticyclone-short-dry.csv")), "used").Id;
        var unused = soundings.Save(File.ReadAllBytes(Demo.Path("spreading-out.csv")), "unused").Id;
        var made = rig.Get<BriefDesk>().Make(new() { SoundingId = used, Site = AutomationRig.Site(new()), Date = new(2026, 6, 24), PreparedAt = Then });
        rig.Get<ReportStore>().Add([new("demo", ReportKind.Observation, "ZZZZ", Then, "METAR ZZZZ 100500Z 00000KT", "example.org", Then)]);
        rig.Get<ReminderStore>().Add(new("demo", new(2026, 1, 10), Then, null));
        rig.Clock.Now = Then.AddDays(59);
        rig.Get<PurgeOld>().Run();
        Assert.NotNull(soundings.Find(unused));
        Assert.Single(rig.Get<ReportStore>().Of("demo", ReportKind.Observation, Then, Then));

        rig.Clock.Now = Then.AddDays(91);
        var result = rig.Get<PurgeOld>().Run();
        Assert.Equal(["1", "2"], result.Figures.Skip(1).Take(2));
        Assert.Null(soundings.Find(unused));
        Assert.NotNull(soundings.Find(used));
        Assert.Equal(made.Id, rig.Get<BriefDesk>().Find(made.Id!)!.Id);
        Assert.Empty(rig.Get<ReportStore>().Of("demo", ReportKind.Observation, Then, Then));
        Assert.Null(rig.Get<ReminderStore>().Of("demo", new(2026, 1, 10)));
    }

    [Fact]
    public async Task An_unsigned_draft_goes_and_a_signed_brief_stays_with_its_ascent_and_files()
    {
        using var rig = new AutomationRig(Then);
        var (unsigned, signed) = (Draft(rig, "spreading-out.csv"), Draft(rig, "anticyclone-short-dry.csv"));
        await rig.Get<Signing>().SignAsync(signed, rig.Get<BriefStore>().Find(signed)!.Version, new("a", "Somebody"), null);
        rig.Clock.Now = Then.AddYears(3);
        Assert.Equal("1", rig.Get<PurgeOld>().Run().Figures[0]);
        Assert.Null(rig.Get<BriefStore>().Find(unsigned));
        Assert.Null(rig.Get<BriefStore>().Find(unsigned, 1));
        Assert.True(rig.Get<BriefDesk>().Find(signed)!.Standing!.IsAsSigned);
        Assert.Equal(5, Published(rig).Length);
    }

    [Fact]
    public async Task Where_the_administrator_set_a_number_of_days_a_signed_brief_goes_with_its_files()
    {
        using var rig = new AutomationRig(Then, null, ("DayBrief:Keep:SignedDays", "400"));
        var signed = Draft(rig, "anticyclone-short-dry.csv");
        await rig.Get<Signing>().SignAsync(signed, rig.Get<BriefStore>().Find(signed)!.Version, new("a", "Somebody"), null);
        rig.Clock.Now = Then.AddDays(399);
        rig.Get<PurgeOld>().Run();
        Assert.NotNull(rig.Get<BriefDesk>().Find(signed));
        rig.Clock.Now = Then.AddDays(402);
        rig.Get<PurgeOld>().Run();
        Assert.Null(rig.Get<BriefDesk>().Find(signed));
        Assert.Empty(Published(rig));
        Assert.Empty(rig.Get<SoundingStore>().Newest(10));
    }

    private static string Draft(AutomationRig rig, string file) => rig.Get<SiteDays>().MakeDraft(new()
    {
        SoundingId = rig.Get<SoundingStore>().Save(File.ReadAllBytes(Demo.Path(file)), file).Id,
        Site = AutomationRig.Site(new()),
        Date = DateOnly.FromDateTime(Then.UtcDateTime),
        PreparedAt = Then,
    });

    private static string[] Published(AutomationRig rig) =>
        Path.Combine(rig.Data, "published") is var folder && Directory.Exists(folder) ? Directory.GetFiles(folder, "*", SearchOption.AllDirectories) : [];
}
