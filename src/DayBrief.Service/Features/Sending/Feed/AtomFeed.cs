using System.Globalization;
using System.Text;
using System.Xml;
using System.Xml.Linq;

namespace DayBrief.Service.Features.Sending.Feed;

/// <summary>A feed as Atom 1.0 [RFC4287]; what took an entry's place is linked as [RFC5829] names it.</summary>
internal sealed record AtomFeed(Guid Id, string Title, DateTimeOffset Updated, string Author, string Self, string Page, string LanguageCode, IReadOnlyList<FeedEntry> Entries)
{
    public const string MediaType = "application/atom+xml; charset=utf-8";

    private static readonly XNamespace Atom = "http://www.w3.org/2005/Atom";

    public byte[] Bytes()
    {
        using var stream = new MemoryStream();
        using (var writer = XmlWriter.Create(stream, new() { Encoding = new UTF8Encoding(false), Indent = true }))
            Document().Save(writer);
        return stream.ToArray();
    }

    private XDocument Document() => new(new XElement(
        Atom + "feed",
        new XAttribute(XNamespace.Xml + "lang", LanguageCode),
        Text("id", $"urn:uuid:{Id}"),
        Text("title", Title),
        Text("updated", Time(Updated)),
        new XElement(Atom + "author", Text("name", Author)),
        Link("self", Self, "application/atom+xml"),
        Link("alternate", Page, "text/html"),
        Text("generator", "DayBrief"),
        Entries.Select(Entry)));

    private static XElement Entry(FeedEntry entry) => new(
        Atom + "entry",
        Text("id", $"urn:uuid:{entry.Id}"),
        Text("title", entry.Title),
        Text("updated", Time(entry.ChangedAt)),
        Text("published", Time(entry.At)),
        new XElement(Atom + "author", Text("name", entry.Author)),
        Link("alternate", entry.Link, "text/html"),
        entry.Successor is { } successor ? Link("successor-version", successor, "text/html") : null,
        new XElement(Atom + "category", new XAttribute("term", entry.Kind)),
        new XElement(Atom + "summary", new XAttribute("type", "text"), Clean(entry.Summary)));

    private static XElement Text(string name, string value) => new(Atom + name, Clean(value));

    private static XElement Link(string relation, string address, string type) =>
        new(Atom + "link", new XAttribute("rel", relation), new XAttribute("type", type), new XAttribute("href", address));

    private static string Time(DateTimeOffset at) => at.UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture);

    /// <summary>What somebody typed may hold characters that XML 1.0 has no place for.</summary>
    private static string Clean(string text)
    {
        var clean = new StringBuilder(text.Length);
        for (var i = 0; i < text.Length; i++)
        {
            if (XmlConvert.IsXmlChar(text[i]))
                clean.Append(text[i]);
            else if (i + 1 < text.Length && XmlConvert.IsXmlSurrogatePair(text[i + 1], text[i]))
                clean.Append(text[i]).Append(text[++i]);
        }

        return clean.ToString();
    }
}
