using System.Net;
using System.Text;
using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.Sites;

namespace DayBrief.Service.Features.Sending.Calendar;

/// <summary>The calendar against the rules of RFC 5545, and as a general library (Ical.Net) reads it.</summary>
[Collection(OneService.Name)]
public sealed class DayCalendarTests
{
    private const string Path = $"/fields/{SendingRig.Site}/day.ics";

    private static CancellationToken Stopping => TestContext.Current.CancellationToken;

    [Fact]
    public async Task There_is_no_calendar_until_the_site_has_one()
    {
        await using var rig = new SendingRig();
        var revision = await rig.SignAsync();
        foreach (var path in new[] { Path, $"/briefs/{revision.BriefId}/day.ics" })
            Assert.Equal(HttpStatusCode.NotFound, (await rig.Host.Client().GetAsync(path, Stopping)).StatusCode);
        rig.SwitchOn(new SiteSendingJson { Calendar = true });
        foreach (var path in new[] { Path, $"/briefs/{revision.BriefId}/day.ics" })
            Assert.Equal(HttpStatusCode.OK, (await rig.Host.Client().GetAsync(path, Stopping)).StatusCode);
        var page = await rig.Host.Client().GetStringAsync($"/briefs/{revision.BriefId}", Stopping);
        Assert.Contains($"""href="/briefs/{revision.BriefId}/day.ics">Calendar""", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_key_times_of_the_signed_brief_are_events_in_UTC()
    {
        await using var rig = await SignedAsync();
        var made = rig.Host.Get<BriefDesk>().Find(rig.Host.Get<Briefs.Revisions.RevisionStore>().LastOfSite(SendingRig.Site, 1)[0].BriefId)!;
        var (times, sun) = (made.Brief.Day.Times, made.Brief.Day.Sun);
        var events = (await LoadAsync(rig)).Events.ToDictionary(happening => happening.Summary!.Split(',')[0]);
        Check(events["First usable thermal"], times.FirstUsable);
        Check(events["Best window"], times.BestFrom);
        Check(events["Last thermal"], times.Last);
        Check(events["Sunset at the field"], sun.Sunset);
        Check(events["Brief valid until"], sun.Sunset);
        Check(events.Single(happening => happening.Key.StartsWith("Trigger ", StringComparison.Ordinal)).Value, times.TriggerTime);
        Assert.Equal(times.BestTo!.Value.UtcDateTime, events["Best window"].DtEnd!.AsUtc);
        Assert.Equal(6, events.Count);
        Assert.All(events.Values, happening => Assert.Contains(happening.Description!, text => text == '\n'));
        Assert.Matches("^Advice, likely range [0-9]{2}:[0-9]{2}–[0-9]{2}:[0-9]{2} local time", events["Last thermal"].Description!);
        Assert.All(events.Values, happening => Assert.Equal("TENTATIVE", happening.Status));

        static void Check(Ical.Net.CalendarComponents.CalendarEvent happening, DateTimeOffset? expected) =>
            Assert.Equal(expected!.Value.UtcDateTime.AddTicks(-(expected.Value.Ticks % TimeSpan.TicksPerSecond)), happening.DtStart!.AsUtc);
    }

    /// <summary>RFC 5545, 3.8.4.7 (UID) and 3.8.7.4 (SEQUENCE); RFC 5546, 2.1.5: with the same number the later DTSTAMP counts.</summary>
    [Fact]
    public async Task Amending_keeps_the_ids_and_raises_the_sequence_and_withdrawing_cancels()
    {
        await using var rig = await SignedAsync();
        var id = rig.Host.Get<Briefs.Revisions.RevisionStore>().LastOfSite(SendingRig.Site, 1)[0].BriefId;
        var first = (await LoadAsync(rig)).Events.ToArray();
        Assert.All(first, happening => Assert.Equal(1, happening.Sequence));
        rig.Clock.Now += TimeSpan.FromHours(1);
        await rig.AmendAsync(id, 15, "cooler");
        var second = (await LoadAsync(rig)).Events.ToArray();
        Assert.Equal(first.Select(happening => happening.Uid).Order(), second.Select(happening => happening.Uid).Order());
        Assert.All(second, happening => Assert.Equal(2, happening.Sequence));
        rig.Clock.Now += TimeSpan.FromHours(1);
        rig.Withdraw(id, "front is early");
        var third = (await LoadAsync(rig)).Events.ToArray();
        Assert.Equal(first.Length, third.Length);
        Assert.All(third, happening => Assert.Equal(("CANCELLED", 2), (happening.Status!, happening.Sequence)));
        Assert.All(third, happening => Assert.True(happening.DtStamp!.AsUtc > second[0].DtStamp!.AsUtc));
    }

    /// <summary>Too cold for thermals: whoever has the first revision's events in the calendar sees that they do not happen.</summary>
    [Fact]
    public async Task A_time_that_an_amendment_takes_away_is_cancelled()
    {
        await using var rig = await SignedAsync();
        var id = rig.Host.Get<Briefs.Revisions.RevisionStore>().LastOfSite(SendingRig.Site, 1)[0].BriefId;
        var before = (await LoadAsync(rig)).Events.Select(happening => happening.Uid).Order().ToArray();
        await rig.AmendAsync(id, 4, "cold air has come in");
        Assert.Null(rig.Host.Get<BriefDesk>().Find(id)!.Brief.Day.Times.FirstUsable);
        var after = (await LoadAsync(rig)).Events.ToArray();
        Assert.Equal(before, after.Select(happening => happening.Uid).Order());
        Assert.Contains(after, happening => happening is { Status: "CANCELLED" } && happening.Summary!.StartsWith("First usable", StringComparison.Ordinal));
        Assert.Contains(after, happening => happening is { Status: "TENTATIVE" } && happening.Summary!.StartsWith("Sunset", StringComparison.Ordinal));
    }

    /// <summary>3.1: lines end in CRLF and have at most 75 octets; no line is broken within a character. 3.4, 3.6.1: what must be there.</summary>
    [Fact]
    public async Task The_text_keeps_the_rules_of_RFC_5545()
    {
        await using var rig = await SignedAsync(site => site with { Name = "Größere Böschung; Süd, \\ \r\nBEGIN:VALARM ☼𝄞 und noch ein langer Name" });
        var bytes = await rig.Host.Client().GetByteArrayAsync(Path, Stopping);
        var text = new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes);
        Assert.EndsWith("\r\n", text, StringComparison.Ordinal);
        var lines = text.Split("\r\n")[..^1];
        Assert.All(lines, line => Assert.DoesNotContain(line, letter => letter is '\r' or '\n'));
        Assert.All(lines, line => Assert.InRange(Encoding.UTF8.GetByteCount(line), 1, 75));
        Assert.Contains(lines, line => line.StartsWith(' '));
        Assert.Equal("BEGIN:VCALENDAR", lines[0]);
        Assert.Equal(1, lines.Count(line => line == "VERSION:2.0"));
        Assert.Equal(1, lines.Count(line => line.StartsWith("PRODID:", StringComparison.Ordinal)));
        Assert.DoesNotContain("BEGIN:VALARM", lines);
        foreach (var name in new[] { "UID:", "DTSTAMP:", "DTSTART:" })
            Assert.Equal(lines.Count(line => line == "BEGIN:VEVENT"), lines.Count(line => line.StartsWith(name, StringComparison.Ordinal)));
        var read = Ical.Net.Calendar.Load(text)!;
        Assert.Contains(read.Events, happening => happening.Summary!.Contains("Größere Böschung; Süd, \\", StringComparison.Ordinal));
    }

    [Fact]
    public async Task An_end_of_validity_that_was_set_is_in_the_fields_own_time()
    {
        await using var rig = await SignedAsync(inputs: inputs => inputs with { ValidUntil = new(16, 30) });
        var until = (await LoadAsync(rig)).Events.Single(happening => happening.Summary!.StartsWith("Brief valid until", StringComparison.Ordinal));
        // Europe/London is an hour ahead of UTC in May.
        Assert.Equal(new DateTime(2026, 5, 21, 15, 30, 0, DateTimeKind.Utc), until.DtStart!.AsUtc);
    }

    [Fact]
    public async Task Where_the_instructor_overrules_a_time_the_instructors_stands_in_the_calendar()
    {
        await using var rig = await SignedAsync(inputs: inputs => inputs with { Judgement = new() { LastThermal = new(15, 10), Reason = "sea air" } });
        var events = (await LoadAsync(rig)).Events.ToDictionary(happening => happening.Summary!.Split(',')[0]);
        // Europe/London is an hour ahead of UTC in May.
        Assert.Equal(new DateTime(2026, 5, 21, 14, 10, 0, DateTimeKind.Utc), events["Last thermal"].DtStart!.AsUtc);
        Assert.StartsWith("Advice: the instructor's own figure.", events["Last thermal"].Description, StringComparison.Ordinal);
        Assert.True(events["Best window"].DtEnd!.AsUtc <= events["Last thermal"].DtStart!.AsUtc);
    }

    private static async Task<SendingRig> SignedAsync(Func<SiteJson, SiteJson>? site = null, Func<BriefInputs, BriefInputs>? inputs = null)
    {
        var rig = new SendingRig();
        rig.SwitchOn(new SiteSendingJson { Calendar = true }, site);
        var first = await rig.SignAsync();
        if (inputs is not null)
        {
            rig.Host.Get<BriefDesk>().Make(inputs(first.Inputs), first.BriefId);
            await rig.SignAgainAsync(first.BriefId, "valid until");
        }

        return rig;
    }

    private static async Task<Ical.Net.Calendar> LoadAsync(SendingRig rig) =>
        Ical.Net.Calendar.Load(await rig.Host.Client().GetStringAsync(Path, Stopping))!;
}
