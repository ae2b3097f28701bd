namespace DayBrief.Service.Features.Briefs;

/// <summary>Which brief somebody gets who asks for today's.</summary>
[Collection(OneService.Name)]
public sealed class CurrentBriefTests
{
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
}
