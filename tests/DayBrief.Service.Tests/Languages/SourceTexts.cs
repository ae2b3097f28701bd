using System.Text.RegularExpressions;
using DayBrief.House;

namespace DayBrief.Service.Languages;

/// <summary>The texts that the sources give to be said in a reader's language, found by reading the sources.</summary>
/// <remarks>A text is a literal given directly (not inside another call) to one of the calls named here. An interpolated
/// one counts with {0}, {1:0.0} … for its holes, as the compiler makes it.</remarks>
internal static partial class SourceTexts
{
    /// <summary>Texts that readers see; each has to stand in every language.</summary>
    public static IReadOnlyDictionary<string, string> Shown { get; } = All(ShownOpener(), onlySentences: false)
        .Concat(All(ShownBesideCode(), onlySentences: true))
        .GroupBy(found => found.Text).ToDictionary(same => same.Key, same => same.First().File);

    /// <summary>Reasons to refuse an input: programs get them in English, pages in the reader's language where it has them.</summary>
    public static IReadOnlySet<string> Refusals { get; } = All(RefusalOpener(), onlySentences: true).Select(found => found.Text).ToHashSet();

    private static IEnumerable<(string Text, string File)> All(Regex opener, bool onlySentences) =>
        from folder in new[] { Repository.Core, Repository.Service }
        from file in Repository.SourceFiles(folder, ".cs", ".razor")
        let source = File.ReadAllText(file)
        from Match match in opener.Matches(source)
        from text in SourceLiterals.Directly(source, match.Index + match.Length)
        where !onlySentences || text.Contains(' ', StringComparison.Ordinal)
        select (text, Path.GetFileName(file));

    /// <summary>Calls whose literals are all texts, and the indexers of those who know a language.</summary>
    [GeneratedRegex(@"\b(?:Say|Language\.Text|Words\.Of|Phrase\.(?:Of|Plain)|NotFoundPage\.Result|translate)\(|\b(?:In|reader|Reader|language|Language|English|German|Chosen|say|Say)\[")]
    private static partial Regex ShownOpener();

    /// <summary>Calls that take a code and a text: remarks about an ascent, cautions about terrain.</summary>
    [GeneratedRegex(@"\b(?:Note|Warn|Unreadable|new Remark)\(|\b(?:remarks|Remarks)\.Add\(|\bnew\((?=""[a-z-]+"", ""[A-Z])")]
    private static partial Regex ShownBesideCode();

    [GeneratedRegex(@"\b(?:Refuse|Refusal|errors\.Add|Add|InvalidInputException\.Field|InvalidReportException|ProblemError)\(")]
    private static partial Regex RefusalOpener();
}
