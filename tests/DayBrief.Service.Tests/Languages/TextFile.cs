using System.Xml.Linq;
using DayBrief.House;

namespace DayBrief.Service.Languages;

/// <summary>A file of texts in the sources.</summary>
internal sealed class TextFile(string name)
{
    private static readonly string Folder = Path.Combine(Repository.Service, "Languages");

    private string Place => Path.Combine(Folder, name);

    /// <summary>Every file of texts, English first.</summary>
    public static IReadOnlyList<TextFile> All { get; } =
        [.. Directory.EnumerateFiles(Folder, "*.resx").Order(StringComparer.Ordinal).Select(file => new TextFile(Path.GetFileName(file))).OrderBy(file => file.IsEnglish ? 0 : 1)];

    public bool IsEnglish => name == "Texts.resx";

    /// <summary>The entries in the order of the file, twice where they stand twice.</summary>
    public IReadOnlyList<(string Key, string Value)> Entries =>
        [.. XDocument.Load(Place, LoadOptions.PreserveWhitespace).Root!.Elements("data").Select(data => (data.Attribute("name")!.Value, data.Element("value")!.Value))];

    public IReadOnlyDictionary<string, string> Texts => Entries.DistinctBy(entry => entry.Key).ToDictionary(entry => entry.Key, entry => entry.Value);

    /// <summary>Sorts the entries, keeps the first of each, one line an entry, and leaves out those nobody says any more.</summary>
    public void Write(Func<string, bool> isSaid)
    {
        var lines = File.ReadAllLines(Place);
        var head = lines.TakeWhile(line => !line.Contains("<data ", StringComparison.Ordinal) && line != "</root>");
        var entries = Entries.DistinctBy(entry => entry.Key).Where(entry => isSaid(entry.Key)).OrderBy(entry => entry.Key, StringComparer.Ordinal)
            .Select(entry => $"  <data name=\"{Escaped(entry.Key)}\" xml:space=\"preserve\"><value>{Escaped(entry.Value)}</value></data>");
        File.WriteAllText(Place, string.Join('\n', [.. head, .. entries, "</root>", ""]));
    }

    public override string ToString() => name;

    private static string Escaped(string text) => text
        .Replace("&", "&amp;", StringComparison.Ordinal).Replace("<", "&lt;", StringComparison.Ordinal)
        .Replace(">", "&gt;", StringComparison.Ordinal).Replace("\"", "&quot;", StringComparison.Ordinal);
}
