using System.Net;
using System.Text.RegularExpressions;
using DayBrief.House;

namespace DayBrief.Service.Features.People;

[Collection(OneService.Name)]
public sealed class AuditPageTests
{
    private static CancellationToken Stopping => TestContext.Current.CancellationToken;

    /// <summary>London is at UTC+1 in May (IANA time zone database): 23:30 UTC is half past midnight of the next day.</summary>
    [Fact]
    public async Task A_day_is_that_of_the_zone_named_and_the_log_outlives_a_restart()
    {
        var clock = new SetClock(new(2026, 5, 20, 12, 0, 0, TimeSpan.Zero));
        await using var host = ServiceHost.With(clock);
        var client = await host.SignedInAsync(Role.Administrator, "Ada Invented");
        clock.Now = new(2026, 5, 20, 23, 30, 0, TimeSpan.Zero);
        host.Get<AuditLog>().Write(new("1", "Bob Invented", Role.Instructor, ByKey: true), "Signed a brief", "harrowmere", "revision 1");
        await host.RestartAsync();
        client = await SignInAsync(host);
        Assert.DoesNotContain("harrowmere", await client.GetStringAsync("/people/audit?day=2026-05-20&zone=Europe/London", Stopping));
        var london = await client.GetStringAsync("/people/audit?day=2026-05-21&zone=Europe/London", Stopping);
        Assert.Contains("00:30:00", london);
        Assert.Contains("Bob Invented, by key", london);
        Assert.Contains("Times are in Europe/London.", london);
        Assert.Contains("23:30:00", await client.GetStringAsync("/people/audit?day=2026-05-20", Stopping));
    }

    [Fact]
    public async Task What_was_done_is_told_in_the_readers_language()
    {
        await using var host = ServiceHost.With(new SetClock(new(2026, 5, 20, 12, 0, 0, TimeSpan.Zero)));
        var client = await host.SignedInAsync(Role.Administrator, "Ada Invented");
        foreach (var action in new[] { "Signed a brief", "Amended a brief", "Withdrew a brief" })
            host.Get<AuditLog>().Write(null, action, "brief-1");
        var page = await client.GetStringAsync("/people/audit?language=de", Stopping);
        foreach (var action in new[] { "Briefing unterschrieben", "Briefing geändert", "Briefing zurückgezogen", "Angemeldet" })
            Assert.Contains($"<strong>{action}</strong>", WebUtility.HtmlDecode(page));
    }

    /// <summary>Language.Text marks a text, and the test of the texts finds it in every language.</summary>
    [Fact]
    public void Every_action_that_is_noted_is_marked_as_a_text()
    {
        var actions = (
            from file in Repository.SourceFiles(Repository.Service, ".cs")
            let source = File.ReadAllText(file)
            from Match call in Regex.Matches(source, @"\b[Aa]udit\.Write\(")
            select (Path.GetFileName(file), Action: Argument(source[(call.Index + call.Length)..], 1))).ToArray();
        Assert.True(actions.Length > 15, "the calls are found");
        Assert.DoesNotContain(actions, noted => Regex.Replace(noted.Action, @"Language\.Text\(""[^""]+""\)", "TEXT") is var rest
            && (rest.Contains('"', StringComparison.Ordinal) || !(rest.Contains("TEXT", StringComparison.Ordinal) || rest.Trim() == "action")));
    }

    /// <summary>One of the arguments after an opened bracket.</summary>
    private static string Argument(string source, int index)
    {
        var (depth, start, inText) = (0, 0, false);
        for (var at = 0; at < source.Length; at++)
        {
            inText ^= source[at] == '"';
            depth += inText ? 0 : source[at] is '(' or '[' or '{' ? 1 : source[at] is ')' or ']' or '}' ? -1 : 0;
            if (inText || depth > 0 || (depth == 0 && source[at] != ','))
                continue;
            if (index-- == 0)
                return source[start..at];
            start = at + 1;
        }

        return "";
    }

    [Theory]
    [InlineData("day=yesterday", "day-error")]
    [InlineData("zone=Nowhere/None", "zone-error")]
    public async Task What_cannot_be_shown_is_told_beside_its_field(string query, string error)
    {
        await using var host = new ServiceHost();
        var client = await host.SignedInAsync(Role.Administrator);
        Assert.Contains(error, await (await client.GetAsync($"/people/audit?{query}", Stopping)).TextAsync(HttpStatusCode.UnprocessableEntity));
    }

    private static async Task<HttpClient> SignInAsync(ServiceHost host)
    {
        var client = host.Client();
        await client.SendFormAsync("/sign-in", "/sign-in", ("name", "Ada Invented"), ("password", ServiceHost.Password));
        return client;
    }
}
