namespace DayBrief.Service.Features.Briefs;

/// <summary>Who has said which group is his reads its note only; who has not reads all, so that none is missed.</summary>
[Collection(OneService.Name)]
public sealed class InstructorNotesTests(ServiceHost host)
{
    private static CancellationToken Stopping => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData("", "circuits only|not beyond the river|mind the lake")]
    [InlineData("?experience=before-solo", "circuits only")]
    [InlineData("?experience=local-solo", "not beyond the river")]
    [InlineData("?experience=cross-country", "mind the lake")]
    public async Task Only_the_notes_of_the_own_group_are_shown(string asked, string shown)
    {
        var page = await host.Client().GetStringAsync($"/briefs/{Made()}{asked}", Stopping);
        Assert.Contains("for all of you", page, StringComparison.Ordinal);
        Assert.Equal(
            shown.Split('|'),
            new[] { "circuits only", "not beyond the river", "mind the lake" }.Where(note => page.Contains(note, StringComparison.Ordinal)));
    }

    private string Made()
    {
        var invented = host.Get<BriefStore>().Find(DemonstrationDays.First)!.Inputs!;
        return host.Get<BriefDesk>().Make(invented with
        {
            Demonstration = false,
            InstructorNote = "for all of you",
            Notes = new("circuits only", "not beyond the river", "mind the lake"),
        }).Id!;
    }
}
