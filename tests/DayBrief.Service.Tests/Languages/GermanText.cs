using System.Net;
using System.Text.RegularExpressions;

namespace DayBrief.Service.Languages;

/// <summary>Reads a page as its reader does, and finds what is not German in it.</summary>
internal static partial class GermanText
{
    /// <summary>Data in the demonstration's own words, and each language's name for itself.</summary>
    private static readonly string[] Kept = ["Harrowmere (invented)", "English", "the demonstration"];

    /// <summary>The English words that are left in what a reader sees or hears.</summary>
    public static string[] EnglishIn(string page) => [.. EnglishWord().Matches(Visible(page)).Select(match => match.Value).Distinct()];

    /// <summary>What a reader sees or hears: texts, and the attributes that are read aloud.</summary>
    public static string Visible(string page)
    {
        var spoken = SpokenAttribute().Matches(page).Select(match => match.Groups[1].Value);
        var text = WebUtility.HtmlDecode(string.Join(' ', [Markup().Replace(Unseen().Replace(page, " "), " "), .. spoken]));
        return Kept.Aggregate(text, (all, kept) => all.Replace(kept, "", StringComparison.Ordinal));
    }

    /// <summary>What stands on it as wrong, each by itself.</summary>
    public static string[] Errors(string page) =>
        [.. Error().Matches(page).Select(match => Visible(match.Groups[1].Value).Trim()).Where(text => text.Length > 0)];

    /// <summary>A client of somebody who has chosen German, as a browser asks for pages.</summary>
    public static HttpClient InGerman(this HttpClient client)
    {
        client.DefaultRequestHeaders.Add("Accept", "text/html,application/xhtml+xml,*/*;q=0.8");
        client.DefaultRequestHeaders.AcceptLanguage.ParseAdd("de");
        return client;
    }

    [GeneratedRegex(@"\b(?:the|of|with|from|are|is|not|above|below|to|by|at|or|and|no|thermals?|field|cloud|known|today|about|usable|climb|trigger|ascent|gusts?|runway|time|height|prepared|level|turn|bank|day|likely|none|usable|your|keep|first|last|must|needs?|number|characters?|give|holds?|message|file|line|row|expected|cannot|already|choose|this|it|its|here|there|has|have|may|used?|one)\b", RegexOptions.IgnoreCase)]
    private static partial Regex EnglishWord();

    [GeneratedRegex(@"(?:aria-label|alt|title|placeholder)=""([^""]*)""")]
    private static partial Regex SpokenAttribute();

    [GeneratedRegex("<(style|script|textarea|code)[^>]*>.*?</\\1>|<option[^>]*>[A-Za-z]+/[^<]*</option>", RegexOptions.Singleline)]
    private static partial Regex Unseen();

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Markup();

    [GeneratedRegex("""<(?:span|p|li|div)[^>]*class="errors?"[^>]*>(.*?)</(?:span|p|li|div)>""", RegexOptions.Singleline)]
    private static partial Regex Error();
}
