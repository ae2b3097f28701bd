using System.Net;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.People;

[Collection(OneService.Name)]
public sealed class AdminKeyTests
{
    private const string Key = "0123456789abcdef0123456789abcdef";

    private static CancellationToken Stopping => TestContext.Current.CancellationToken;

    [Fact]
    public async Task With_a_key_in_the_environment_the_trial_is_over()
    {
        await using var host = ServiceHost.With(settings: (AdminKey.Variable, Key));
        await (await PostAsync(host, null)).ProblemAsync(HttpStatusCode.Unauthorized);
        await (await PostAsync(host, Key[..^1] + "0")).ProblemAsync(HttpStatusCode.Unauthorized);
        await (await PostAsync(host, Key)).JsonAsync(HttpStatusCode.Created);
        Assert.Equal(HttpStatusCode.Redirect, (await host.Client().GetAsync("/briefs/new", Stopping)).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await host.Client().GetAsync("/", Stopping)).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await host.Client().GetAsync("/api/v1/briefs/demo-broad", Stopping)).StatusCode);
    }

    [Fact]
    public void A_key_of_31_characters_is_refused_and_one_of_32_is_not()
    {
        var refused = Assert.Throws<UnusableSettingException>(() => new AdminKey(Key[..31]));
        Assert.Contains("32 characters", refused.Message);
        Assert.DoesNotContain(Key[..31], refused.Message);
        Assert.True(new AdminKey(Key).Is(Key));
        Assert.False(new AdminKey(null).IsSet);
    }

    private static async Task<HttpResponseMessage> PostAsync(ServiceHost host, string? key)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, "/api/v1/soundings") { Content = Demo.Plain(Demo.Text("broad-post-frontal.txt")) };
        if (key is not null)
            request.Headers.Add("X-Api-Key", key);
        return await host.Client().SendAsync(request, Stopping);
    }
}
