using System.Net;
using System.Net.Http.Headers;

namespace DayBrief.Service.Features.Phone;

[Collection(OneService.Name)]
public sealed class FollowBriefTests
{
    private static CancellationToken Stopping => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Events_tell_the_state_at_once_and_at_every_change_and_end_when_the_program_stops()
    {
        await using var briefs = new SignedBriefs();
        var id = await briefs.SignAsync();
        using var client = briefs.Host.Client();
        using var lines = new StreamReader(await client.GetStreamAsync($"/briefs/{id}/events", Stopping));
        Assert.Equal($"{id}.r1.20260521", await NextAsync(lines, null));
        await briefs.AmendAsync(id, 19);
        Assert.Equal($"{id}.r2.20260521", await NextAsync(lines, $"{id}.r1.20260521"));
        briefs.Withdraw(id);
        Assert.Equal($"{id}.r2.20260521.withdrawn", await NextAsync(lines, $"{id}.r2.20260521"));
        var stop = briefs.Host.RestartAsync();
        Assert.Null(await NextAsync(lines, $"{id}.r2.20260521.withdrawn"));
        await stop;
    }

    [Fact]
    public async Task Who_knows_the_state_is_told_only_that()
    {
        await using var briefs = new SignedBriefs();
        using var client = briefs.Host.Client();
        foreach (var root in new[] { "", "/fields/harrowmere", "/briefs/demo-broad" })
        {
            using var first = await client.GetAsync($"{root}/state", Stopping);
            Assert.Equal("""{"state":"demo-broad.invented"}""", await first.Content.ReadAsStringAsync(Stopping));
            client.DefaultRequestHeaders.IfNoneMatch.Add(new EntityTagHeaderValue(first.Headers.ETag!.Tag));
            using var second = await client.GetAsync($"{root}/state", Stopping);
            Assert.Equal(HttpStatusCode.NotModified, second.StatusCode);
            client.DefaultRequestHeaders.IfNoneMatch.Clear();
        }

        var id = await briefs.SignAsync();
        Assert.Contains($"{id}.r1.20260521", await client.GetStringAsync("/state", Stopping));
        briefs.Clock.Now = briefs.Clock.Now.AddDays(1);
        Assert.Contains($"{id}.r1.20260522", await client.GetStringAsync($"/briefs/{id}/state", Stopping));
        Assert.Contains("none", await client.GetStringAsync("/briefs/nowhere/state", Stopping));
    }

    /// <summary>The next state that is told, but for repetitions of a known one, which keep the line open.</summary>
    private static async Task<string?> NextAsync(StreamReader lines, string? known)
    {
        while (await lines.ReadLineAsync(Stopping) is { } line)
        {
            if (line.StartsWith("data: ", StringComparison.Ordinal) && line[6..] != known)
                return line[6..];
        }

        return null;
    }
}
