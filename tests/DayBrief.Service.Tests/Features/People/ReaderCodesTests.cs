using System.Net;

namespace DayBrief.Service.Features.People;

[Collection(OneService.Name)]
public sealed class ReaderCodesTests
{
    private const string Code = "Blue Windsock 7";

    private static CancellationToken Stopping => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_site_with_a_code_asks_once_on_each_device_and_again_after_another_code()
    {
        await using var host = new ServiceHost();
        var administrator = await host.SignedInAsync(Role.Administrator);
        Assert.Contains("code-error", await (await SetAsync(administrator, "short")).TextAsync(HttpStatusCode.UnprocessableEntity));
        Assert.Equal(HttpStatusCode.Redirect, (await SetAsync(administrator, Code)).StatusCode);

        var reader = host.Client();
        foreach (var path in new[] { "/", "/fields/harrowmere", "/briefs/demo-broad", "/briefs/demo-broad/sheet", "/briefs/demo-broad/sheet.pdf", "/briefs/demo-broad/technique" })
        {
            var asked = await reader.GetAsync(path, Stopping);
            Assert.Equal(HttpStatusCode.Redirect, asked.StatusCode);
            Assert.Equal($"/fields/harrowmere/code?returnUrl={Uri.EscapeDataString(path)}", asked.Headers.Location!.ToString());
        }

        await (await reader.GetAsync("/api/v1/briefs/demo-broad", Stopping)).ProblemAsync(HttpStatusCode.Unauthorized);
        Assert.Contains("This is not the code.", await (await GiveAsync(reader, "Red Windsock 7", "/")).TextAsync(HttpStatusCode.UnprocessableEntity));
        Assert.Equal("/", (await GiveAsync(reader, "blue  windsock 7", "//elsewhere.example")).Headers.Location!.ToString());
        await ReadsAsync(reader, HttpStatusCode.OK);
        await ReadsAsync(administrator, HttpStatusCode.OK);

        await SetAsync(administrator, "Another code");
        await ReadsAsync(reader, HttpStatusCode.Redirect);
        await administrator.SendFormAsync("/people/codes", "/people/codes/harrowmere/remove");
        await ReadsAsync(host.Client(), HttpStatusCode.OK);
        Assert.Equal(
            ["Removed the code for readers", "Set the code for readers", "Set the code for readers"],
            host.Get<AuditLog>().Between(DateTimeOffset.UnixEpoch, DateTimeOffset.MaxValue).Select(entry => entry.Action).Where(action => action.Contains("code", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task A_cookie_made_up_by_somebody_opens_nothing()
    {
        await using var host = new ServiceHost();
        host.Get<ReaderCodes>().Set("harrowmere", Code);
        using var request = new HttpRequestMessage(HttpMethod.Get, "/briefs/demo-broad");
        request.Headers.Add("Cookie", $"daybrief-code-{Secret.Hash("harrowmere")[..16]}=CfDJ8invented");
        Assert.Equal(HttpStatusCode.Redirect, (await host.Client().SendAsync(request, Stopping)).StatusCode);
    }

    [Fact]
    public async Task The_list_of_all_briefs_leaves_out_a_site_whose_code_was_not_given()
    {
        await using var host = new ServiceHost();
        Assert.Contains("demo-broad", await host.Client().GetStringAsync("/briefs", Stopping));
        host.Get<ReaderCodes>().Set("harrowmere", Code);
        Assert.DoesNotContain("demo-broad", await host.Client().GetStringAsync("/briefs", Stopping));
        var reader = host.Client();
        await GiveAsync(reader, Code, "/briefs");
        Assert.Contains("demo-broad", await reader.GetStringAsync("/briefs", Stopping));
    }

    private static async Task ReadsAsync(HttpClient client, HttpStatusCode expected) =>
        Assert.Equal(expected, (await client.GetAsync("/briefs/demo-broad", Stopping)).StatusCode);

    private static Task<HttpResponseMessage> SetAsync(HttpClient administrator, string code) =>
        administrator.SendFormAsync("/people/codes", "/people/codes", ("site", "harrowmere"), ("code", code));

    private static Task<HttpResponseMessage> GiveAsync(HttpClient reader, string code, string back) =>
        reader.SendFormAsync("/fields/harrowmere/code", "/fields/harrowmere/code", ("code", code), ("returnUrl", back));
}
