using System.Globalization;
using System.Net;
using System.ServiceModel.Syndication;
using System.Xml;
using System.Xml.Linq;
using DayBrief.Service.Features.Sites;

namespace DayBrief.Service.Features.Sending.Feed;

/// <summary>The feed against the rules of RFC 4287, and as the framework's general reader takes it.</summary>
[Collection(OneService.Name)]
public sealed class AtomFeedTests
{
    private const string Path = $"/fields/{SendingRig.Site}/feed.atom";
    private static readonly XNamespace Atom = "http://www.w3.org/2005/Atom";

    private static CancellationToken Stopping => TestContext.Current.CancellationToken;

    [Fact]
    public async Task There_is_no_feed_until_the_site_has_one()
    {
        await using var rig = new SendingRig();
        await rig.SignAsync();
        Assert.Equal(HttpStatusCode.NotFound, (await rig.Host.Client().GetAsync(Path, Stopping)).StatusCode);
        Assert.DoesNotContain("feed.atom", await rig.Host.Client().GetStringAsync($"/fields/{SendingRig.Site}", Stopping), StringComparison.Ordinal);
        rig.SwitchOn(new SiteSendingJson { Feed = true });
        Assert.Equal(HttpStatusCode.OK, (await rig.Host.Client().GetAsync(Path, Stopping)).StatusCode);
        var page = WebUtility.HtmlDecode(await rig.Host.Client().GetStringAsync($"/fields/{SendingRig.Site}", Stopping));
        Assert.Contains("""<link rel="alternate" type="application/atom+xml" href="/fields/harrowmere/feed.atom""", page, StringComparison.Ordinal);
        Assert.Contains("""<a href="/fields/harrowmere/feed.atom">Feed</a>""", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_feed_keeps_the_rules_of_RFC_4287()
    {
        await using var rig = await StoryAsync();
        var answer = await rig.Host.Client().GetAsync(Path, Stopping);
        Assert.Equal("application/atom+xml", answer.Content.Headers.ContentType!.MediaType);
        var feed = XDocument.Parse(await answer.Content.ReadAsStringAsync(Stopping)).Root!;
        Assert.Equal(Atom + "feed", feed.Name);
        // 4.1.1: exactly one id, title and updated; at least one author; a link to itself.
        CheckCommon(feed);
        Assert.Single(feed.Elements(Atom + "link"), link => (string?)link.Attribute("rel") == "self");
        var entries = feed.Elements(Atom + "entry").ToArray();
        Assert.Equal(3, entries.Length);
        foreach (var entry in entries)
        {
            // 4.1.2: an entry without content has exactly one alternate link, and one summary at most.
            CheckCommon(entry);
            var link = Assert.Single(entry.Elements(Atom + "link"), link => (string?)link.Attribute("rel") == "alternate");
            Assert.Equal(HttpStatusCode.OK, (await rig.Host.Client().GetAsync((string)link.Attribute("href")!, Stopping)).StatusCode);
            Assert.Single(entry.Elements(Atom + "summary"));
        }

        var ids = entries.Select(entry => (string)entry.Element(Atom + "id")!).ToArray();
        Assert.Equal(ids.Length, ids.Distinct().Count());
        var updated = entries.Select(Updated).ToArray();
        Assert.Equal(updated.OrderDescending(), updated);
        Assert.Equal(updated[0], Updated(feed));
        Assert.Equal(["withdrawn", "amended", "published"], entries.Select(entry => (string?)entry.Element(Atom + "category")!.Attribute("term")));
    }

    /// <summary>4.2.6: an id never changes, whatever happens to the rest; not by a restart and not by another name of the host.</summary>
    [Fact]
    public async Task Ids_stay_through_amendments_restarts_and_other_host_names()
    {
        await using var rig = new SendingRig();
        rig.SwitchOn(new SiteSendingJson { Feed = true });
        var first = await rig.SignAsync();
        var before = await LoadAsync(rig, "brief.field.example");
        await rig.AmendAsync(first.BriefId, 12, "cooler \u0001\uFFFE & <b>");
        await rig.Host.RestartAsync();
        var after = await LoadAsync(rig, "localhost");
        Assert.Equal(before.Id, after.Id);
        Assert.Equal([before.Items.Single().Id], after.Items.Select(item => item.Id).Skip(1));
        // What no longer holds says so before everything else; the rest of it never changes.
        var said = after.Items.Last().Summary.Text.Split('\n', 2);
        Assert.StartsWith("Replaced by revision 2, signed by Ada Invented: https://brief.field.example/briefs/", said[0].Replace("http://localhost", "https://brief.field.example", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Equal(before.Items.Single().Summary.Text, said[1]);
        Assert.Contains("Why: cooler  & <b>", after.Items.First().Summary.Text.Replace("\uFFFE", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.All([after.Id, .. after.Items.Select(item => item.Id)], id => Assert.Matches("^urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-8[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$", id));
    }

    [Fact]
    public async Task A_reader_that_has_the_feed_gets_it_again_only_when_it_has_changed()
    {
        await using var rig = new SendingRig();
        rig.SwitchOn(new SiteSendingJson { Feed = true });
        var first = await rig.SignAsync();
        var client = rig.Host.Client();
        var tag = (await client.GetAsync(Path, Stopping)).Headers.ETag!;
        client.DefaultRequestHeaders.IfNoneMatch.Add(tag);
        Assert.Equal(HttpStatusCode.NotModified, (await client.GetAsync(Path, Stopping)).StatusCode);
        await rig.AmendAsync(first.BriefId, 12, "cooler");
        Assert.Equal(HttpStatusCode.OK, (await client.GetAsync(Path, Stopping)).StatusCode);
    }

    private static async Task<SendingRig> StoryAsync()
    {
        var rig = new SendingRig();
        rig.SwitchOn(new SiteSendingJson { Feed = true });
        var first = await rig.SignAsync();
        rig.Clock.Now += TimeSpan.FromHours(1);
        await rig.AmendAsync(first.BriefId, 12, "cooler");
        rig.Clock.Now += TimeSpan.FromHours(1);
        rig.Withdraw(first.BriefId, "front is early");
        return rig;
    }

    private static void CheckCommon(XElement element)
    {
        foreach (var name in new[] { "id", "title", "updated" })
            Assert.NotEmpty(Assert.Single(element.Elements(Atom + name)).Value);
        Assert.NotEmpty(element.Element(Atom + "author")!.Element(Atom + "name")!.Value);
        Assert.True(Uri.TryCreate((string)element.Element(Atom + "id")!, UriKind.Absolute, out _));
    }

    /// <summary>3.3: a date construct is an RFC 3339 date-time with an upper-case T and an offset or Z.</summary>
    private static DateTimeOffset Updated(XElement element) =>
        DateTimeOffset.ParseExact((string)element.Element(Atom + "updated")!, "yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal);

    private static async Task<SyndicationFeed> LoadAsync(SendingRig rig, string host)
    {
        using var client = rig.Host.Client();
        client.DefaultRequestHeaders.Host = host;
        using var reader = XmlReader.Create(new StringReader(await client.GetStringAsync(Path, Stopping)));
        return SyndicationFeed.Load(reader);
    }
}
