using DayBrief.Service.Features.Soundings;

namespace DayBrief.Service.Features.Briefs;

/// <summary>What is computed, read and fetched once and then remembered.</summary>
[Collection(OneService.Name)]
public sealed class BriefDeskTests(ServiceHost host)
{
    private BriefInputs Invented => host.Get<BriefStore>().Find(DemonstrationDays.First)!.Inputs!;

    [Fact]
    public void Words_are_taken_over_and_compute_no_day_again()
    {
        var desk = host.Get<BriefDesk>();
        var day = desk.Computed(Invented).Day;
        var at = Invented.PreparedAt.AddMinutes(5);
        var worded = desk.Computed(Invented with
        {
            PreparedBy = "Ada Invented",
            PreparedAt = at,
            InstructorNote = "Look at the ground first.",
            DayLimits = "No solo after 16:00",
            ValidUntil = new TimeOnly(15, 0),
        });
        Assert.Same(day, worded.Day);
        Assert.Equal(("Ada Invented", at), (worded.PreparedBy, worded.PreparedAt));
        Assert.NotSame(day, desk.Computed(Invented with { Assumptions = Invented.Assumptions with { CloudOktas = 6 } }).Day);
    }

    [Fact]
    public void A_kept_ascent_is_read_once_for_a_day_and_never_under_an_id_that_nothing_is_kept_under()
    {
        var soundings = host.Get<SoundingStore>();
        var site = Invented.Site.ToSite();
        var chosen = soundings.Choose(Invented.SoundingId, null, site, Invented.Date);
        Assert.NotNull(chosen);
        Assert.Same(chosen, soundings.Choose(Invented.SoundingId, null, site, Invented.Date));
        var later = Demo.Text("broad-post-frontal.txt") + "\n";
        Assert.Empty(soundings.Contents("0123456789abcdef"));
        Assert.Null(soundings.Choose("0123456789abcdef", null, site, Invented.Date));
        var id = soundings.Keep(System.Text.Encoding.UTF8.GetBytes(later), "later");
        Assert.Single(soundings.Contents(id));
        Assert.Equal(id, soundings.Keep(System.Text.Encoding.UTF8.GetBytes(later), "the same again"));
    }
}
