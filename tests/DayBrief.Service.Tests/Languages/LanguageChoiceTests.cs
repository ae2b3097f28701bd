namespace DayBrief.Service.Languages;

[Collection(OneService.Name)]
public sealed class LanguageChoiceTests(ServiceHost host)
{
    [Fact]
    public async Task A_language_asked_for_in_the_link_is_used_and_remembered()
    {
        using var client = host.Client();
        using var asked = await client.GetAsync("/briefs?language=de", TestContext.Current.CancellationToken);
        var page = await asked.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.Contains("<html lang=\"de\">", page, StringComparison.Ordinal);
        Assert.Contains("Alle Briefings", page, StringComparison.Ordinal);
        Assert.Contains(asked.Headers.GetValues("Set-Cookie"), cookie => cookie.StartsWith("daybrief-language=de", StringComparison.Ordinal));
    }

    [Fact]
    public async Task The_switch_keeps_what_else_the_link_asks_for()
    {
        using var client = host.Client();
        var page = await client.GetStringAsync("/briefs/demo-broad?units=metric&language=de", TestContext.Current.CancellationToken);
        Assert.Contains("href=\"/briefs/demo-broad?units=metric&amp;language=en\"", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_browser_that_prefers_German_gets_German()
    {
        using var client = host.Client();
        client.DefaultRequestHeaders.AcceptLanguage.ParseAdd("fr, de-AT;q=0.8, en;q=0.5");
        Assert.Contains("<html lang=\"de\">", await client.GetStringAsync("/briefs", TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }
}
