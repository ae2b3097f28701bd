using System.Net;
using System.Text.RegularExpressions;
using DayBrief.Service.Features.Sites;

namespace DayBrief.Service.Features.Briefs;

/// <summary>Somebody has just started it: each page says what it shows and what comes next.</summary>
[Collection(OneService.Name)]
public sealed partial class FirstStepsTests
{
    private static CancellationToken Stopping => TestContext.Current.CancellationToken;

    [Fact]
    public async Task The_first_page_says_that_it_is_a_demonstration_and_what_to_do_and_after_the_set_up_the_field_is_offered()
    {
        await using var host = new ServiceHost();
        var client = host.Client();
        var first = await client.GetStringAsync("/", Stopping);
        Assert.Contains("New installation: this day is invented. What to do next", first);
        Assert.Contains("Demonstration: field, ascent and day are invented.", first);
        Assert.Contains("Become the administrator: open the link that the service printed", await client.GetStringAsync("/begin", Stopping));

        var link = SetUp().Match(string.Join('\n', host.Log.Lines)).Groups[1].Value;
        var done = await client.SendFormAsync(
            $"/set-up?token={link}", "/set-up", ("token", link), ("name", "Ada Invented"), ("password", ServiceHost.Password), ("again", ServiceHost.Password));
        Assert.Equal("/begin", done.Headers.Location?.ToString());
        Assert.Matches("""class="button" href="/sites/new">Add your field""", await client.GetStringAsync("/begin", Stopping));
        Assert.Contains("Next: add your field", await client.GetStringAsync("/", Stopping));

        host.Get<SiteStore>().Save(host.Get<SiteStore>().Find(DemonstrationDays.FieldId)! with { Id = "downs", Name = "Testing Down" });
        Assert.Contains("Next: the first brief", await client.GetStringAsync("/", Stopping));
        Assert.Contains("/briefs/new?site=downs", WebUtility.HtmlDecode(await client.GetStringAsync("/begin", Stopping)));
    }

    [Fact]
    public async Task Once_something_is_signed_nothing_of_this_stands_above_a_brief()
    {
        await using var signed = new SignedBriefs();
        await signed.SignAsync();
        Assert.DoesNotContain("class=\"begin\"", await signed.Host.Client().GetStringAsync("/", Stopping));
    }

    [GeneratedRegex(@"/set-up\?token=([\w\-]+)")]
    private static partial Regex SetUp();
}
