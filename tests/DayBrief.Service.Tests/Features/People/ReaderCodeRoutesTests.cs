using System.Net;
using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.Sites;
using Microsoft.AspNetCore.Routing;

namespace DayBrief.Service.Features.People;

/// <summary>A site that asks for a code, and every route of the service there is, as somebody who has not given it.</summary>
[Collection(OneService.Name)]
public sealed class ReaderCodeRoutesTests
{
    private const string Site = "harrowmere";
    private const string Told = "Told only to those who have the code";

    /// <summary>Roots under which everything is about one brief or what holds at one site.</summary>
    private static readonly string[] Roots = ["/briefs/{id}", "/fields/{site}", "/api/v1/briefs/{id}"];

    private static CancellationToken Stopping => TestContext.Current.CancellationToken;

    /// <summary>The routes come from the service itself: a new one is asked without anybody thinking of it.</summary>
    [Fact]
    public async Task Without_the_code_no_route_gives_anything_of_the_brief_and_with_it_each_does()
    {
        await using var briefs = new SignedBriefs();
        var id = await SignAsync(briefs);
        var paths = Patterns(briefs.Host).SelectMany(pattern => Filled(pattern, id)).ToArray();
        var open = await ReadAsync(briefs.Host.Client(), paths);
        briefs.Host.Get<ReaderCodes>().Set(Site, "Blue Windsock 7");

        var shut = await ReadAsync(briefs.Host.Client(), paths);
        Assert.DoesNotContain(shut, answer => answer.Body.Contains(Told, StringComparison.Ordinal));
        Assert.All(shut.Where(answer => IsOfBrief(answer.Pattern)), answer => Assert.True(Asks(answer), $"{answer.Path} answers {answer.Status} to somebody without the code"));
        Assert.All(
            shut.Where(answer => open.Any(before => before.Path == answer.Path && before.Body.Contains(Told, StringComparison.Ordinal))),
            answer => Assert.True(Asks(answer) || answer.Path == "/briefs", answer.Path));

        var reader = briefs.Host.Client();
        await reader.SendFormAsync($"/fields/{Site}/code", $"/fields/{Site}/code", ("code", "Blue Windsock 7"), ("returnUrl", "/"));
        Assert.DoesNotContain(await ReadAsync(reader, paths), Asks);
    }

    /// <summary>The test above would prove nothing if the routes gave nothing to anybody.</summary>
    [Theory]
    [InlineData("/", "text/html")]
    [InlineData("/briefs/{id}", "text/html")]
    [InlineData("/briefs/{id}/events", "text/event-stream")]
    [InlineData("/briefs/{id}/state", "application/json")]
    [InlineData("/briefs/{id}/sheet.pdf", "application/pdf")]
    [InlineData("/briefs/{id}/day.ics", "text/calendar")]
    [InlineData("/fields/{site}/feed.atom", "application/atom+xml")]
    [InlineData("/api/v1/briefs/{id}", "application/json")]
    public async Task Where_no_code_is_asked_for_the_routes_of_a_brief_give_it(string pattern, string type)
    {
        await using var briefs = new SignedBriefs();
        var id = await SignAsync(briefs);
        Assert.Contains(pattern, Patterns(briefs.Host));
        using var answer = await briefs.Host.Client().GetAsync(Filled(pattern, id).First(), HttpCompletionOption.ResponseHeadersRead, Stopping);
        Assert.Equal((HttpStatusCode.OK, type), (answer.StatusCode, answer.Content.Headers.ContentType?.MediaType));
    }

    private static async Task<string> SignAsync(SignedBriefs briefs)
    {
        // Nobody tries the service out any more: what is not for readers asks who it is.
        await briefs.Host.SignedInAsync(Role.Administrator);
        var sites = briefs.Host.Get<SiteStore>();
        sites.Save(sites.Find(Site)! with { Sending = new() { Feed = true, Calendar = true } });
        var drafts = briefs.Host.Get<BriefStore>();
        drafts.Save(DemonstrationDays.First, drafts.Find(DemonstrationDays.First)!.Inputs! with { InstructorNote = Told });
        return await briefs.SignAsync();
    }

    private static IReadOnlyList<string> Patterns(ServiceHost host) =>
    [
        .. host.Get<EndpointDataSource>().Endpoints.OfType<RouteEndpoint>()
            .Where(route => route.Metadata.GetMetadata<HttpMethodMetadata>()?.HttpMethods.Contains("GET") != false)
            .Select(route => $"/{route.RoutePattern.RawText!.TrimStart('/')}")
            .Distinct()
            .Order(StringComparer.Ordinal),
    ];

    /// <summary>The launch point's page asks for more than the code: somebody who is signed in.</summary>
    private static bool IsOfBrief(string pattern) =>
        Roots.Any(root => pattern == root || pattern.StartsWith($"{root}/", StringComparison.Ordinal))
        && pattern.TrimEnd('/') is not ("/fields/{site}/code" or "/fields/{site}/actuals");

    /// <summary>The pattern with what there is put in; a parameter that nobody has thought of fails the test.</summary>
    private static IEnumerable<Asked> Filled(string pattern, string id)
    {
        var site = pattern.StartsWith("/sites", StringComparison.Ordinal) || pattern.StartsWith("/api/v1/sites", StringComparison.Ordinal);
        var path = pattern
            .Replace("{id}", site ? Site : id, StringComparison.Ordinal)
            .Replace("{site}", Site, StringComparison.Ordinal)
            .Replace("{number:int}", "1", StringComparison.Ordinal)
            .Replace("{date}", "2026-05-21", StringComparison.Ordinal);
        string[] all = path.Contains("{extension}", StringComparison.Ordinal)
            ? [.. new[] { "json", "pdf", "ascent", "sha256" }.Select(extension => path.Replace("{extension}", extension, StringComparison.Ordinal))]
            : [path];
        Assert.DoesNotContain(all, one => one.Contains('{', StringComparison.Ordinal));
        return all.Select(one => new Asked(pattern, one));
    }

    private static async Task<Answered[]> ReadAsync(HttpClient client, IEnumerable<Asked> asked)
    {
        var answers = new List<Answered>();
        foreach (var (pattern, path) in asked)
        {
            using var answer = await client.GetAsync(path, HttpCompletionOption.ResponseHeadersRead, Stopping);
            // A stream of events does not end; whether it begins is what counts.
            var body = answer.Content.Headers.ContentType?.MediaType == "text/event-stream" ? "" : await answer.Content.ReadAsStringAsync(Stopping);
            answers.Add(new(pattern, path, answer.StatusCode, answer.Headers.Location?.ToString(), WebUtility.HtmlDecode(body)));
        }

        return [.. answers];
    }

    private static bool Asks(Answered answer) =>
        (answer.Status == HttpStatusCode.Unauthorized && answer.Body.Contains("The site asks for its code.", StringComparison.Ordinal))
        || (answer.Status == HttpStatusCode.Redirect && answer.Location!.StartsWith($"/fields/{Site}/code?", StringComparison.Ordinal));

    private sealed record Asked(string Pattern, string Path)
    {
        public static implicit operator string(Asked asked) => asked.Path;
    }

    private sealed record Answered(string Pattern, string Path, HttpStatusCode Status, string? Location, string Body);
}
