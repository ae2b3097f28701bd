using System.Net;

namespace DayBrief.Service.Features.People;

/// <summary>Before anybody can sign in: writes only from the machine itself. Addresses and headers by RFC 7239 and common practice of proxies.</summary>
[Collection(OneService.Name)]
public sealed class TrialTests(ServiceHost host)
{
    private const string Csv = "broad-post-frontal.txt";

    private static CancellationToken Stopping => TestContext.Current.CancellationToken;

    [Fact]
    public async Task At_the_machine_a_sounding_is_kept() =>
        await (await SendAsync(_ => { })).JsonAsync(HttpStatusCode.Created);

    [Theory]
    [InlineData("X-Forwarded-For", "203.0.113.7")]
    [InlineData("X-Forwarded-For", "127.0.0.1")]
    [InlineData("Forwarded", "for=203.0.113.7")]
    [InlineData("X-Real-IP", "203.0.113.7")]
    [InlineData("Via", "1.1 proxy")]
    [InlineData("Sec-Fetch-Site", "cross-site")]
    [InlineData("Sec-Fetch-Site", "same-site")]
    [InlineData("Origin", "https://elsewhere.example")]
    [InlineData("Origin", "null")]
    [InlineData("Host", "rebound.example")]
    public async Task What_came_through_a_proxy_or_from_another_page_is_refused(string header, string value)
    {
        var answer = await SendAsync(request => request.Headers.Add(header, value));
        var errors = await answer.ProblemAsync(HttpStatusCode.Unauthorized);
        Assert.Equal("X-Api-Key", errors[0].GetProperty("field").GetString());
        Assert.NotEmpty(answer.Headers.WwwAuthenticate);
    }

    [Fact]
    public async Task An_own_page_may_send() =>
        await (await SendAsync(request =>
        {
            request.Headers.Add("Origin", host.Address.GetLeftPart(UriPartial.Authority));
            request.Headers.Add("Sec-Fetch-Site", "same-origin");
        })).JsonAsync(HttpStatusCode.Created);

    [Fact]
    public async Task Analyses_stay_open_to_everybody()
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, "/api/v1/analyses") { Content = Demo.Plain(Demo.Text(Csv)) };
        request.Headers.Add("X-Forwarded-For", "203.0.113.7");
        await (await host.Client().SendAsync(request, Stopping)).JsonAsync(HttpStatusCode.OK);
    }

    [Fact]
    public async Task A_page_that_writes_leads_strangers_to_the_sign_in()
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, "/briefs/new?a=b");
        request.Headers.Add("X-Forwarded-For", "203.0.113.7");
        var answer = await host.Client().SendAsync(request, Stopping);
        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        Assert.Equal("/sign-in?returnUrl=%2Fbriefs%2Fnew%3Fa%3Db", answer.Headers.Location!.ToString());
    }

    private async Task<HttpResponseMessage> SendAsync(Action<HttpRequestMessage> change)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, "/api/v1/soundings") { Content = Demo.Plain(Demo.Text(Csv)) };
        change(request);
        return await host.Client().SendAsync(request, Stopping);
    }
}
