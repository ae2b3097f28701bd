using System.Net;

namespace DayBrief.Service.Features.People;

/// <summary>Which role gets where, and that no other page can send a form for somebody.</summary>
[Collection(OneService.Name)]
public sealed class AccessTests
{
    private static CancellationToken Stopping => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Each_role_gets_as_far_as_it_should()
    {
        await using var host = new ServiceHost();
        (Role? Role, HttpStatusCode Sounding, HttpStatusCode Desk, HttpStatusCode People)[] expected =
        [
            (Role.Administrator, HttpStatusCode.Created, HttpStatusCode.OK, HttpStatusCode.OK),
            (Role.Instructor, HttpStatusCode.Created, HttpStatusCode.OK, HttpStatusCode.Forbidden),
            (Role.Reader, HttpStatusCode.Forbidden, HttpStatusCode.Forbidden, HttpStatusCode.Forbidden),
            (null, HttpStatusCode.Unauthorized, HttpStatusCode.Redirect, HttpStatusCode.Redirect),
        ];
        foreach (var (role, sounding, desk, people) in expected)
        {
            var client = role is { } some ? await host.SignedInAsync(some) : host.Client();
            Assert.Equal(sounding, (await client.PostAsync("/api/v1/soundings", Demo.Plain(Demo.Text("broad-post-frontal.txt")), Stopping)).StatusCode);
            Assert.Equal(desk, (await client.GetAsync("/briefs/new", Stopping)).StatusCode);
            foreach (var path in new[] { "/people", "/people/keys", "/people/audit", "/people/codes" })
                Assert.Equal(people, (await client.GetAsync(path, Stopping)).StatusCode);
            foreach (var path in new[] { "/", "/briefs", "/briefs/demo-broad", "/briefs/demo-broad/sheet.pdf", "/api/v1/briefs/demo-broad" })
                Assert.Equal(HttpStatusCode.OK, (await client.GetAsync(path, Stopping)).StatusCode);
        }
    }

    [Fact]
    public async Task No_other_page_sends_for_somebody_who_has_signed_in()
    {
        await using var host = new ServiceHost();
        var client = await host.SignedInAsync(Role.Administrator);
        using var noToken = new FormUrlEncodedContent([new("name", "Eve Invented"), new("role", "administrator")]);
        Assert.Equal(HttpStatusCode.BadRequest, (await client.PostAsync("/people", noToken, Stopping)).StatusCode);
        using var desk = new MultipartFormDataContent { { new StringContent("x"), "text" } };
        Assert.Equal(HttpStatusCode.BadRequest, (await client.PostAsync("/briefs", desk, Stopping)).StatusCode);
        using var request = new HttpRequestMessage(HttpMethod.Post, "/api/v1/soundings") { Content = Demo.Plain(Demo.Text("broad-post-frontal.txt")) };
        request.Headers.Add("Sec-Fetch-Site", "cross-site");
        await (await client.SendAsync(request, Stopping)).ProblemAsync(HttpStatusCode.Forbidden);
        Assert.Null(host.Get<PersonStore>().FindByName("Eve Invented"));
    }
}
