using System.Text.RegularExpressions;
using DayBrief.House;

namespace DayBrief.Service.Languages;

/// <summary>The texts that the sources give to be said in a reader's language, found by reading the sources.</summary>
/// <remarks>A text is a literal given directly (not inside another call) to one of the calls named here. An interpolated
/// one counts with {0}, {1:0.0} … for its holes, as the compiler makes it. Remarks and refusals are found by
/// <see cref="CompiledWords"/>.</remarks>
internal static partial class SourceTexts
{
    /// <summary>Texts that readers see; each has to stand in every language.</summary>
    public static IReadOnlyDictionary<string, string> Shown { get; } = All()
        .GroupBy(found => found.Text).ToDictionary(same => same.Key, same => same.First().File);

    private static IEnumerable<(string Text, string File)> All() =>
        from folder in new[] { Repository.Core, Repository.Service }
        from file in Repository.SourceFiles(folder, ".cs", ".razor")
        let source = File.ReadAllText(file)
        from Match match in Opener().Matches(source)
        from text in SourceLiterals.Directly(source, match.Index + match.Length)
        select (text, Path.GetFileName(file));

    /// <summary>Calls whose literals are all texts, and the indexers of those who know a language.</summary>
    [GeneratedRegex(@"\b(?:Say|Language\.Text|Phrase\.(?:Of|Plain)|NotFoundPage\.Result|translate)\(|\b(?:In|reader|Reader|language|Language|English|German|Chosen|say|Say)\[")]
    private static partial Regex Opener();
}
