using System.Globalization;
using System.Resources;
using DayBrief.Texts;

namespace DayBrief.Service.Languages;

/// <summary>A language of pages, sheets and messages: its texts, dates and decimals.</summary>
/// <remarks>The English text is the key, with {0}, {1:0.0} … for what is put into it; every text stands in
/// <c>Texts.resx</c> (English) and in one file for each other language. A text without a translation is shown in English.
/// Languages are passed, never ambient, so that the same input and language give the same bytes.</remarks>
public sealed class Language
{
    /// <summary>The cookie that remembers the reader's choice; the query parameter is <c>language</c>.</summary>
    public const string Cookie = "daybrief-language";

    private static readonly ResourceManager Texts = new("DayBrief.Service.Languages.Texts", typeof(Language).Assembly);

    private readonly CultureInfo _resources;

    private Language(string code, string name, CultureInfo culture)
    {
        (Code, Name, Culture) = (code, name, culture);
        _resources = code == "en" ? CultureInfo.InvariantCulture : new CultureInfo(code);
    }

    /// <summary>English, complete by definition.</summary>
    public static Language English { get; } = new("en", "English", CultureInfo.ReadOnly(WithMinus()));

    /// <summary>German.</summary>
    public static Language German { get; } = new("de", "Deutsch", GermanConventions());

    /// <summary>Every language there is, English first.</summary>
    public static IReadOnlyList<Language> All { get; } = [English, German];

    /// <summary>Its ISO 639-1 code.</summary>
    public string Code { get; }

    /// <summary>Its own name for itself.</summary>
    public string Name { get; }

    /// <summary>Decimal and group separators, names of days and months. The same on every machine.</summary>
    public CultureInfo Culture { get; }

    /// <summary>A text without figures.</summary>
    public string this[string text] => Texts.GetString(text, _resources) ?? WithoutNote(text);

    /// <summary>A text with figures; each is formatted as this language does.</summary>
    public string Say(FormattableString text) =>
        string.Format(Culture, this[text.Format], text.GetArguments());

    /// <summary>A message of the core or about an input.</summary>
    public string Say(Words words) => words.In(Culture, text => this[text]);

    /// <summary>One text for one thing, another for several.</summary>
    public string Say(long count, FormattableString one, FormattableString several) => Say(count == 1 ? one : several);

    /// <summary>A day in full, such as "Thursday 21 May 2026".</summary>
    public string Date(DateOnly date) => date.ToString(this[Language.Text("dddd d MMMM yyyy")], Culture);

    /// <summary>A short date with the time of day, already in the zone wanted.</summary>
    public string DateAndTime(DateTimeOffset local) => local.ToString(this[Language.Text("ddd d MMM yyyy HH:mm")], Culture);

    /// <summary>Marks a text that is said elsewhere, so that the test of the resources finds it.</summary>
    public static string Text(string text) => text;

    /// <summary>The language of that code; null when there is none.</summary>
    public static Language? Named(string? code) =>
        All.FirstOrDefault(language => string.Equals(language.Code, code, StringComparison.OrdinalIgnoreCase));

    /// <summary>A site's own language, for what is sent to nobody in particular: English where it states none that there is.</summary>
    public static Language OfSite(string? code) => Named(code) ?? English;

    /// <summary>The reader's language: asked for in the link, else remembered, else the site's, else the browser's first that
    /// we have, else English.</summary>
    public static Language Of(HttpRequest request, string? ofSite = null) =>
        LanguageChoice.Asked(request)
        ?? Named(request.Cookies[Cookie])
        ?? Named(ofSite)
        ?? request.GetTypedHeaders().AcceptLanguage
            .OrderByDescending(accepted => accepted.Quality ?? 1)
            .Select(accepted => Named(accepted.Value.Value?.Split('-')[0]))
            .FirstOrDefault(known => known is not null)
        ?? English;

    /// <summary>A key may end in a note in brackets for the translator, which tells texts apart that are one in English.</summary>
    internal static string WithoutNote(string text) =>
        text.EndsWith(']') && text.LastIndexOf(" [", StringComparison.Ordinal) is > 0 and var note ? text[..note] : text;

    /// <summary>A minus sign, not a hyphen, before what is below zero.</summary>
    private static CultureInfo WithMinus()
    {
        var culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        culture.NumberFormat.NegativeSign = "−";
        return culture;
    }

    /// <summary>DIN 1333 and DIN 5008 (from memory): comma for decimals, point between thousands, "Montag, 3. August 2026".</summary>
    private static CultureInfo GermanConventions()
    {
        var culture = WithMinus();
        culture.NumberFormat.NumberDecimalSeparator = ",";
        culture.NumberFormat.NumberGroupSeparator = ".";
        culture.DateTimeFormat.DayNames = ["Sonntag", "Montag", "Dienstag", "Mittwoch", "Donnerstag", "Freitag", "Samstag"];
        culture.DateTimeFormat.AbbreviatedDayNames = ["So", "Mo", "Di", "Mi", "Do", "Fr", "Sa"];
        culture.DateTimeFormat.MonthNames = culture.DateTimeFormat.MonthGenitiveNames =
            ["Januar", "Februar", "März", "April", "Mai", "Juni", "Juli", "August", "September", "Oktober", "November", "Dezember", ""];
        culture.DateTimeFormat.AbbreviatedMonthNames = culture.DateTimeFormat.AbbreviatedMonthGenitiveNames =
            ["Jan.", "Feb.", "März", "Apr.", "Mai", "Juni", "Juli", "Aug.", "Sept.", "Okt.", "Nov.", "Dez.", ""];
        return CultureInfo.ReadOnly(culture);
    }
}
