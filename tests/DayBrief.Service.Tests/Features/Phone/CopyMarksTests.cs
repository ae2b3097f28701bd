namespace DayBrief.Service.Features.Phone;

[Collection(OneService.Name)]
public sealed class CopyMarksTests(ServiceHost host)
{
    [Theory]
    [InlineData("/", true)]
    [InlineData("/briefs/demo-broad", true)]
    [InlineData("/briefs/demo-broad/sheet.pdf", true)]
    [InlineData("/briefs", false)]
    [InlineData("/briefs/new", false)]
    [InlineData("/desk", false)]
    [InlineData("/briefs/demo-broad/sheet", false)]
    [InlineData("/api/v1/briefs/demo-broad", false)]
    [InlineData("/fields/nowhere", false)]
    [InlineData("/sign-in", false)]
    public async Task Only_what_is_meant_for_readers_may_be_kept(string path, bool kept)
    {
        using var answer = await host.Client().GetAsync(path, TestContext.Current.CancellationToken);
        Assert.Equal(kept, answer.Headers.Contains("DayBrief-Choice"));
    }

    [Fact]
    public async Task The_mark_names_the_choice_that_the_page_is_for_and_the_phone_remembers_it()
    {
        using var client = host.Client();
        await client.GetAsync("/briefs/demo-broad?units=metric&language=de", TestContext.Current.CancellationToken);
        await client.GetAsync("/briefs/demo-broad?scheme=dark", TestContext.Current.CancellationToken);
        using var answer = await client.GetAsync("/briefs/demo-broad", TestContext.Current.CancellationToken);
        Assert.Equal(
            "language=de&units=metric&scheme=dark&glider=trainer&instrument=usual&experience=local-solo",
            Assert.Single(answer.Headers.GetValues("DayBrief-Choice")));
        Assert.Contains("<html lang=\"de\" class=\"dark\">", await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
    }
}
