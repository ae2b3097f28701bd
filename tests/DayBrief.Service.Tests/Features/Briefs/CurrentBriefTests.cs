using System.Net;
using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Features.People;

namespace DayBrief.Service.Features.Briefs;

/// <summary>Which brief somebody gets who asks for today's, and which days can still be found.</summary>
[Collection(OneService.Name)]
public sealed class CurrentBriefTests
{
    private static CancellationToken Stopping => TestContext.Current.CancellationToken;

    [Fact]
    public async Task After_the_day_the_newest_signed_is_shown_of_the_field_that_is_asked_for()
    {
        await using var signed = new SignedBriefs();
        var current = signed.Host.Get<CurrentBrief>();
        Assert.Equal(DemonstrationDays.First, current.For(null)?.Id);
        Assert.Equal(DemonstrationDays.First, current.For("harrowmere")?.Id);
        Assert.Null(current.For("elsewhere"));
        var early = await signed.SignAsync("north");
        signed.Clock.Now += TimeSpan.FromMinutes(20);
        var late = await signed.SignAsync("south");
        signed.Clock.Now += TimeSpan.FromMinutes(20);
        await signed.AmendAsync(early, 15);
        signed.Clock.Now += TimeSpan.FromDays(3);
        Assert.Equal(late, current.For("south")?.Id);
        Assert.Equal((early, 2), (current.For("north")?.Id, current.For("north")?.Standing?.Revision?.Number));
        Assert.Null(current.For("harrowmere"));
        Assert.Equal(early, current.For(null)?.Id);
    }

    [Fact]
    public async Task A_mistyped_year_is_not_todays_brief_and_neither_is_what_was_withdrawn_on_a_day_that_is_over()
    {
        await using var signed = new SignedBriefs();
        var current = signed.Host.Get<CurrentBrief>();
        await signed.SignAsync(date: new(2062, 5, 21));
        Assert.Null(current.For(null));
        Assert.Null(current.For("harrowmere"));
        var yesterday = await signed.SignAsync(date: new(2026, 5, 20));
        Assert.Equal(yesterday, current.For(null)?.Id);
        var tomorrow = await signed.SignAsync(date: new(2026, 5, 22));
        Assert.Equal(tomorrow, current.For("harrowmere")?.Id);
        signed.Withdraw(tomorrow);
        Assert.Equal(tomorrow, current.For(null)?.Id);
        var today = await signed.SignAsync();
        Assert.Equal(today, current.For(null)?.Id);
        signed.Withdraw(today);
        Assert.Equal(today, current.For(null)?.Id);
        signed.Clock.Now += TimeSpan.FromDays(4);
        Assert.Equal(yesterday, current.For(null)?.Id);
    }

    [Fact]
    public async Task The_code_of_one_field_does_not_close_the_first_page_to_the_readers_of_another()
    {
        await using var signed = new SignedBriefs();
        using var client = signed.Host.Client();
        var open = await signed.SignAsync("north");
        signed.Clock.Now += TimeSpan.FromMinutes(20);
        var closed = await signed.SignAsync("south");
        signed.Host.Get<ReaderCodes>().Set("south", "Blue Windsock 7");
        Assert.Contains("Field north", await (await client.GetAsync("/", Stopping)).TextAsync(HttpStatusCode.OK), StringComparison.Ordinal);
        Assert.Contains(open, await client.GetStringAsync("/state", Stopping), StringComparison.Ordinal);
        foreach (var path in new[] { "/fields/south", $"/briefs/{closed}" })
            Assert.Equal(HttpStatusCode.Redirect, (await client.GetAsync(path, Stopping)).StatusCode);
        // A field that is the only one asks for its code at the first page too.
        signed.Host.Get<ReaderCodes>().Set("north", "Red Windsock 3");
        Assert.Equal(HttpStatusCode.Redirect, (await client.GetAsync("/", Stopping)).StatusCode);
    }

    /// <summary>More than 200, of which the list once made drafts, and more than 400, beyond which they were gone.</summary>
    [Fact]
    public async Task Every_signed_day_stays_in_the_list_and_none_is_called_a_draft()
    {
        await using var signed = new SignedBriefs();
        using var client = signed.Host.Client();
        var revisions = signed.Host.Get<RevisionStore>();
        var first = await signed.SignAsync();
        var (kept, drafts) = (revisions.Find(first, 1)!, signed.Host.Get<BriefStore>());
        for (var day = 1; day <= 450; day++)
        {
            drafts.Save($"day{day}", kept.Inputs with { Date = kept.Date.AddDays(-day) });
            revisions.Add((kept with { BriefId = $"day{day}", Date = kept.Date.AddDays(-day), Content = "{}" }).Sealed());
        }

        var (pages, path) = ("", "/briefs");
        for (var page = 0; path.Length > 0; page++)
        {
            Assert.True(page < 10, "the list ends");
            var text = await (await client.GetAsync(path, Stopping)).TextAsync(HttpStatusCode.OK);
            pages += text;
            path = System.Text.RegularExpressions.Regex.Match(text, "href=\"(/briefs\\?before=[0-9-]+)\">").Groups[1].Value;
        }

        Assert.Contains($"/briefs/{first}\"", pages, StringComparison.Ordinal);
        for (var day = 1; day <= 450; day++)
            Assert.Contains($"/briefs/day{day}\"", pages, StringComparison.Ordinal);
        Assert.DoesNotContain("draft, not signed", pages, StringComparison.Ordinal);
        Assert.Equal(451, pages.Split("revision 1, signed by Ada Invented").Length - 1);
    }
}
