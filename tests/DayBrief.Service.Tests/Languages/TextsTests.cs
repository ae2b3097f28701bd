using System.Text.RegularExpressions;

namespace DayBrief.Service.Languages;

/// <summary>Every text stands in every language. DAYBRIEF_WRITE_TEXTS=1 sorts the files and drops what is not said any more.</summary>
public sealed partial class TextsTests
{
    public TextsTests()
    {
        if (Environment.GetEnvironmentVariable("DAYBRIEF_WRITE_TEXTS") != "1")
            return;
        foreach (var file in TextFile.All)
            file.Write(IsSaid);
    }

    [Fact]
    public void There_are_two_languages_and_many_texts()
    {
        Assert.Equal(Language.All.Count, TextFile.All.Count);
        Assert.True(SourceTexts.Shown.Count > 300, "the sources are read");
        Assert.True(CompiledWords.All.Count > 100, "the compiled remarks and refusals are read");
    }

    [Fact]
    public void Every_text_that_is_said_stands_in_every_language() =>
        Assert.Empty(
            from file in TextFile.All
            let texts = file.Texts
            from text in Said
            where !texts.ContainsKey(text.Key)
            select $"{file} lacks, from {text.Value}: {text.Key}");

    /// <summary>A remark or refusal made of a text that nobody knew before could not be translated.</summary>
    [Fact]
    public void Every_remark_and_refusal_is_known_before_the_program_runs() => Assert.Empty(CompiledWords.Unknown);

    [Fact]
    public void No_text_is_left_that_nobody_says() =>
        Assert.Empty(
            from file in TextFile.All
            from key in file.Texts.Keys
            where !IsSaid(key)
            select $"{file}: {key}");

    [Fact]
    public void English_is_its_own_key() =>
        Assert.DoesNotContain(TextFile.All[0].Entries, entry => entry.Value != Language.WithoutNote(entry.Key));

    /// <summary>A translation may leave nothing out and round nothing otherwise; only dates are written its own way.</summary>
    [Fact]
    public void Every_language_says_the_same_figures() =>
        Assert.Empty(
            from file in TextFile.All
            from entry in file.Entries
            where !Figures(entry.Key).SequenceEqual(Figures(entry.Value))
            select $"{file}: {entry.Key} ≠ {entry.Value}");

    /// <summary>The compiler of resources takes "Time" and "time" for one; a note in brackets tells them apart.</summary>
    [Fact]
    public void No_two_texts_differ_in_case_only() =>
        Assert.DoesNotContain(TextFile.All[0].Texts.Keys.GroupBy(key => key, StringComparer.OrdinalIgnoreCase), same => same.Count() > 1);

    [Fact]
    public void The_files_are_sorted_and_say_nothing_twice() =>
        Assert.All(TextFile.All, file => Assert.Equal(
            file.Entries.Select(entry => entry.Key).Distinct().Order(StringComparer.Ordinal),
            file.Entries.Select(entry => entry.Key)));

    private static IEnumerable<KeyValuePair<string, string>> Said => SourceTexts.Shown.Concat(CompiledWords.All);

    private static bool IsSaid(string key) => SourceTexts.Shown.ContainsKey(key) || CompiledWords.All.ContainsKey(key);

    private static IEnumerable<string> Figures(string text) =>
        Figure().Matches(text).Select(match => DateFormat().IsMatch(match.Groups[2].Value) ? match.Groups[1].Value : match.Value)
            .Distinct().Order(StringComparer.Ordinal);

    [GeneratedRegex(@"\{(\d+)(:[^}]*)?\}")]
    private static partial Regex Figure();

    [GeneratedRegex("[dMyH]")]
    private static partial Regex DateFormat();
}
