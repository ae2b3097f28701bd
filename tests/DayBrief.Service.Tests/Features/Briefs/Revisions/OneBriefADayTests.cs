using System.Net;
using System.Text.Json;
using DayBrief.Service.Features.People;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Infrastructure;
using LiteDB;
using UglyToad.PdfPig;

namespace DayBrief.Service.Features.Briefs.Revisions;

/// <summary>One field, one day, one brief: what is signed takes the place of what was signed before, and every form says so.</summary>
[Collection(OneService.Name)]
public sealed class OneBriefADayTests
{
    private const string Site = "harrowmere";
    private const string Reason = "The front comes earlier";

    private static readonly DateOnly Day = new(2026, 5, 21);

    private static CancellationToken Stopping => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_second_brief_for_the_field_and_day_asks_why_and_counts_on()
    {
        await using var signed = new SignedBriefs();
        var first = await signed.SignAsync();
        var refused = await Assert.ThrowsAsync<InvalidInputException>(() => signed.SignAsync());
        Assert.Equal("reason", Assert.Single(refused.Errors).Field);
        Assert.Contains("Ada Invented has signed revision 1 already", refused.Errors[0].Detail, StringComparison.Ordinal);
        var second = await signed.SignAsync(reason: Reason);
        var (before, now) = (Revisions(signed).Find(first, 1)!, Revisions(signed).Find(second, 2)!);
        Assert.Equal((Reason, before.Hash, first), (now.Reason, now.PreviousHash, now.Replaces));
        Assert.Equal(now.Id, Revisions(signed).Holding(Site, Day)!.Id);
        Assert.Equal([(first, 1), (second, 2)], Revisions(signed).OrderOf(Site, Day));
    }

    [Fact]
    public async Task The_first_says_replaced_on_page_sheet_JSON_and_to_open_phones_with_a_link()
    {
        await using var signed = new SignedBriefs();
        using var client = signed.Host.Client();
        var first = await signed.SignAsync();
        signed.Clock.Now += TimeSpan.FromMinutes(50);
        var second = await signed.SignAsync(reason: Reason);
        foreach (var path in new[] { $"/briefs/{first}", $"/briefs/{first}/revisions/1" })
        {
            var page = await (await client.GetAsync(path, Stopping)).TextAsync(HttpStatusCode.OK);
            Assert.Contains($"Replaced 09:20 by Ada Invented: revision 2 counts instead of revision 1. {Reason} <a href=\"/briefs/{second}\">", page, StringComparison.Ordinal);
            Assert.Contains("class=\"void\" data-stamp=\"REPLACED\"", page, StringComparison.Ordinal);
        }

        var json = await (await client.GetAsync($"/api/v1/briefs/{first}", Stopping)).JsonAsync(HttpStatusCode.OK);
        Assert.Equal(second, json.GetProperty("replacedBy").GetString());
        Assert.Equal("replaced", json.GetProperty("standing").GetProperty("state").GetString());
        Assert.Equal(
            JsonValueKind.Null, (await (await client.GetAsync($"/api/v1/briefs/{second}", Stopping)).JsonAsync(HttpStatusCode.OK)).GetProperty("replacedBy").ValueKind);
        Assert.Contains($".replaced.{second}-r2", await client.GetStringAsync($"/briefs/{first}/state", Stopping), StringComparison.Ordinal);
        Assert.Contains("REPLACED", await SheetAsync(client, $"/briefs/{first}/sheet.pdf"), StringComparison.Ordinal);
        Assert.DoesNotContain("REPLACED", await SheetAsync(client, $"/briefs/{second}/sheet.pdf"), StringComparison.Ordinal);
        // A phone that gets the second drops its copies of the first.
        using var open = await client.GetAsync($"/fields/{Site}", Stopping);
        Assert.Equal(first, Assert.Single(open.Headers.GetValues("DayBrief-Instead")));
    }

    [Fact]
    public async Task The_field_leads_to_what_holds_and_the_first_never_comes_back_by_a_withdrawal()
    {
        await using var signed = new SignedBriefs();
        using var client = signed.Host.Client();
        var first = await signed.SignAsync();
        var second = await signed.SignAsync(reason: Reason);
        Assert.Contains($"\"state\":\"{second}.r2", await client.GetStringAsync($"/fields/{Site}/state", Stopping), StringComparison.Ordinal);
        var refused = Assert.Throws<InvalidInputException>(() => signed.Withdraw(first));
        Assert.Contains($"/desk/{second}", refused.Errors[0].Detail, StringComparison.Ordinal);
        signed.Withdraw(second);
        Assert.Contains($"\"state\":\"{second}.r2.20260521.withdrawn", await client.GetStringAsync($"/fields/{Site}/state", Stopping), StringComparison.Ordinal);
        Assert.Contains("class=\"void\" data-stamp=\"WITHDRAWN\"", await client.GetStringAsync($"/fields/{Site}", Stopping), StringComparison.Ordinal);
        Assert.Contains("To that one, which was withdrawn", await client.GetStringAsync($"/briefs/{first}", Stopping), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_first_amended_takes_its_place_back_and_counts_on()
    {
        await using var signed = new SignedBriefs();
        var first = await signed.SignAsync();
        var second = await signed.SignAsync(reason: Reason);
        await signed.AmendAsync(first, 19);
        Assert.Equal((first, 3), (Revisions(signed).Holding(Site, Day)!.BriefId, Revisions(signed).Latest(first)!.Number));
        Assert.True(signed.Host.Get<BriefDesk>().Find(second)!.Standing!.IsReplaced, "the second is replaced");
        Assert.False(signed.Host.Get<BriefDesk>().Find(first)!.Standing!.IsReplaced, "the first holds");
    }

    [Fact]
    public async Task A_signed_brief_stays_with_its_field_and_day()
    {
        await using var signed = new SignedBriefs();
        var id = await signed.SignAsync();
        var inputs = signed.Host.Get<BriefStore>().Find(id)!.Inputs!;
        signed.Host.Get<BriefDesk>().Make(inputs with { Date = Day.AddDays(1) }, id);
        var refused = await Assert.ThrowsAsync<InvalidInputException>(() => signed.Host.Get<Signing>().SignAsync(id, 2, new("ada", "Ada Invented"), "another day"));
        Assert.Contains("2026-05-21", refused.Errors[0].Detail, StringComparison.Ordinal);
        Assert.Equal(1, Revisions(signed).Latest(id)!.Number);
    }

    /// <summary>The store itself refuses it, and keeps nothing of it: two who sign at one moment, in two processes, are not both first.</summary>
    [Fact]
    public async Task A_place_is_taken_once()
    {
        await using var signed = new SignedBriefs();
        var held = Revisions(signed).Find(await signed.SignAsync(), 1)!;
        var late = (held with { BriefId = "late" }).Sealed();
        Assert.Throws<LiteException>(() => Revisions(signed).Add(late));
        Assert.Null(Revisions(signed).Find("late", 1));
        Assert.Equal(held.Id, Revisions(signed).Holding(Site, Day)!.Id);
    }

    /// <summary>As an earlier version kept them: two for one day, each the first of its brief, and no row that says which holds.</summary>
    [Fact]
    public async Task What_was_signed_side_by_side_before_is_put_in_order_at_the_next_start()
    {
        await using var signed = new SignedBriefs();
        var first = Revisions(signed).Find(await signed.SignAsync(), 1)!;
        var later = (first with { BriefId = "later", SignedAt = first.SignedAt.AddHours(1) }).Sealed();
        var database = signed.Host.Get<Database>();
        database.Write("revisions", revisions => revisions.Insert(new BsonDocument
        {
            ["_id"] = later.Id,
            ["brief"] = later.BriefId,
            ["number"] = later.Number,
            ["site"] = later.SiteId,
            ["date"] = later.Date.DayNumber,
            ["signedAt"] = later.SignedAt.ToUnixTimeMilliseconds(),
            ["text"] = later.Text,
            ["hash"] = later.Hash,
        }));
        foreach (var collection in new[] { "dayHeads", "dayPlaces" })
            database.Write(collection, rows => rows.DeleteAll());
        await signed.Host.RestartAsync();
        Assert.Equal("later", Revisions(signed).Holding(Site, Day)!.BriefId);
        Assert.True(signed.Host.Get<BriefDesk>().Find(first.BriefId)!.Standing!.IsReplaced, "the first is replaced");
        Assert.Equal(3, Revisions(signed).Latest(await signed.SignAsync(reason: Reason))!.Number);
    }

    [Fact]
    public async Task The_desk_says_before_signing_whose_place_it_takes_and_asks_why()
    {
        await using var signed = new SignedBriefs();
        var first = await signed.SignAsync();
        var inputs = signed.Host.Get<BriefStore>().Find(first)!.Inputs!;
        var draft = signed.Host.Get<BriefDesk>().Make(inputs with { Assumptions = new() { MaxTemperatureC = 15 } }).Id!;
        using var instructor = await signed.Host.SignedInAsync(Role.Instructor);
        var page = await (await instructor.GetAsync($"/desk/{draft}", Stopping)).TextAsync(HttpStatusCode.OK);
        Assert.Contains("For this field and day Ada Invented has signed revision 1,", page, StringComparison.Ordinal);
        Assert.Contains("name=\"reason\"", page, StringComparison.Ordinal);
        Assert.Contains("Sign revision 2", page, StringComparison.Ordinal);
        var bare = await instructor.SendFormAsync($"/desk/{draft}", $"/desk/{draft}/sign", ("version", "1"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, bare.StatusCode);
        var why = await instructor.SendFormAsync($"/desk/{draft}", $"/desk/{draft}/sign", ("version", "1"), ("reason", Reason));
        Assert.Equal(HttpStatusCode.Redirect, why.StatusCode);
        Assert.Equal((draft, 2), (Revisions(signed).Holding(Site, Day)!.BriefId, Revisions(signed).Latest(draft)!.Number));
    }

    [Fact]
    public async Task The_feed_says_at_the_first_that_it_is_replaced_and_the_calendar_moves_its_events()
    {
        await using var signed = new SignedBriefs();
        using var client = signed.Host.Client();
        var sites = signed.Host.Get<SiteStore>();
        sites.Save(sites.Find(Site)! with { Sending = new() { Feed = true, Calendar = true } });
        var first = await signed.SignAsync();
        var events = Uids(await client.GetStringAsync($"/briefs/{first}/day.ics", Stopping));
        signed.Clock.Now += TimeSpan.FromMinutes(50);
        var second = await signed.SignAsync(reason: Reason);
        var feed = await client.GetStringAsync($"/fields/{Site}/feed.atom", Stopping);
        Assert.Contains("Replaced by revision 2, signed by Ada Invented:", feed, StringComparison.Ordinal);
        Assert.Contains($"rel=\"successor-version\" type=\"text/html\" href=\"{signed.Host.Address}briefs/{second}\"", feed, StringComparison.Ordinal);
        foreach (var path in new[] { $"/briefs/{first}/day.ics", $"/briefs/{second}/day.ics", $"/fields/{Site}/day.ics" })
        {
            var calendar = await client.GetStringAsync(path, Stopping);
            Assert.Equal(events, Uids(calendar));
            Assert.DoesNotContain("SEQUENCE:1", calendar, StringComparison.Ordinal);
            Assert.DoesNotContain($"/briefs/{first}", calendar, StringComparison.Ordinal);
        }
    }

    private static string[] Uids(string calendar) =>
        [.. calendar.Split("\r\n").Where(line => line.StartsWith("UID:", StringComparison.Ordinal)).Order(StringComparer.Ordinal)];

    private static RevisionStore Revisions(SignedBriefs signed) => signed.Host.Get<RevisionStore>();

    private static async Task<string> SheetAsync(HttpClient client, string path)
    {
        using var pdf = PdfDocument.Open(await client.GetByteArrayAsync(path, Stopping));
        return pdf.GetPage(1).Text;
    }
}
