using System.Net;
using DayBrief.Service.Features.People;

namespace DayBrief.Service.Features.Briefs;

/// <summary>Drafts hold unfinished figures and notes about people: who sees them, in every place where a brief is shown.</summary>
[Collection(OneService.Name)]
public sealed class DraftAccessTests
{
    private const string Note = "Only with an instructor, says the draft.";

    private static CancellationToken Stopping => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_draft_is_for_those_who_prepare_and_for_nobody_else_in_no_form()
    {
        await using var host = new ServiceHost();
        var instructor = await host.SignedInAsync(Role.Instructor);
        var reader = await host.SignedInAsync(Role.Reader);
        var address = await DraftAsync(instructor);
        var id = address.Split('/')[^1];
        string[] forms =
        [
            $"/briefs/{id}", $"/briefs/{id}/sheet", $"/briefs/{id}/sheet.pdf", $"/briefs/{id}/technique", $"/briefs/{id}/technique.pdf",
            $"/briefs/{id}/state", $"/api/v1/briefs/{id}", $"/api/v1/briefs/{id}/revisions",
        ];
        foreach (var client in new[] { reader, host.Client() })
        {
            foreach (var form in forms)
            {
                var answer = await client.GetAsync(form, Stopping);
                Assert.Equal((form, HttpStatusCode.NotFound), (form, answer.StatusCode));
                Assert.DoesNotContain(Note, await answer.Content.ReadAsStringAsync(Stopping));
            }

            foreach (var list in new[] { "/", "/briefs", "/fields/harrowmere" })
                Assert.DoesNotContain(id, await client.GetStringAsync(list, Stopping));
        }

        foreach (var form in forms)
            Assert.NotEqual((form, HttpStatusCode.NotFound), (form, (await instructor.GetAsync(form, Stopping)).StatusCode));
        Assert.Contains(Note, await instructor.GetStringAsync($"/briefs/{id}", Stopping));
        Assert.Contains(id, await instructor.GetStringAsync("/briefs", Stopping));
        await instructor.SendFormAsync(address, $"{address}/sign", ("version", "1"));
        Assert.Contains(Note, await host.Client().GetStringAsync($"/briefs/{id}", Stopping));
    }

    /// <summary>In a trial nobody can sign in; whoever sits at the machine is the instructor. A proxy's header says that he does not.</summary>
    [Fact]
    public async Task In_a_trial_the_one_at_the_machine_sees_his_draft_and_others_the_demonstration()
    {
        await using var host = new ServiceHost();
        var id = (await DraftAsync(host.Client())).Split('/')[^1];
        Assert.Contains(Note, await host.Client().GetStringAsync("/", Stopping));
        using var far = host.Client();
        far.DefaultRequestHeaders.Add("X-Forwarded-For", "198.51.100.7");
        var page = await far.GetStringAsync("/", Stopping);
        Assert.DoesNotContain(Note, page);
        Assert.Contains("Harrowmere (invented)", page);
        Assert.Equal(HttpStatusCode.NotFound, (await far.GetAsync($"/briefs/{id}", Stopping)).StatusCode);
    }

    [Fact]
    public async Task A_discarded_draft_leaves_desk_and_lists_and_comes_back_when_it_is_kept_again()
    {
        await using var host = new ServiceHost();
        var instructor = await host.SignedInAsync(Role.Instructor, "Ada Invented");
        var address = await DraftAsync(instructor, date: DateOnly.FromDateTime(host.Get<TimeProvider>().GetUtcNow().UtcDateTime));
        var id = address.Split('/')[^1];
        Assert.Contains(id, await instructor.GetStringAsync("/desk", Stopping));
        Assert.Equal("/desk", (await instructor.SendFormAsync(address, $"{address}/discard")).Headers.Location?.ToString());
        Assert.DoesNotContain(id, await instructor.GetStringAsync("/desk", Stopping));
        Assert.DoesNotContain(id, await instructor.GetStringAsync("/briefs", Stopping));
        Assert.Contains("was discarded", await instructor.GetStringAsync(address, Stopping));
        var fields = host.Get<BriefStore>().Find(id)!.Fields!.Select(field => (field.Key, field.Value)).ToArray();
        await instructor.SendFormAsync(address, address, [("version", "2"), .. fields]);
        Assert.Contains(id, await instructor.GetStringAsync("/desk", Stopping));
    }

    [Fact]
    public async Task What_was_signed_is_withdrawn_and_not_discarded()
    {
        await using var host = new ServiceHost();
        var instructor = await host.SignedInAsync(Role.Instructor, "Ada Invented");
        var address = await DraftAsync(instructor);
        await instructor.SendFormAsync(address, $"{address}/sign", ("version", "1"));
        var page = await (await instructor.SendFormAsync(address, $"{address}/discard")).TextAsync(HttpStatusCode.Conflict);
        Assert.Contains("can be withdrawn, not discarded", page);
        Assert.Null(host.Get<BriefStore>().Find(address.Split('/')[^1])!.DiscardedAt);
    }

    private static async Task<string> DraftAsync(HttpClient client, DateOnly? date = null)
    {
        var made = await client.SendFormAsync(
            "/briefs/new", "/briefs", ("text", Demo.Text("broad-post-frontal.txt")), ("site", "harrowmere"), ("date", $"{date ?? new(2026, 5, 21):yyyy-MM-dd}"),
            ("groundWetness", "normal"), ("maxTemperatureC", "17"), ("instructorNote", Note));
        Assert.Equal(HttpStatusCode.Redirect, made.StatusCode);
        return made.Headers.Location!.ToString();
    }
}
