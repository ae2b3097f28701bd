using System.Globalization;
using System.Net;
using System.Text.Json;
using System.Text.RegularExpressions;
using DayBrief.Service.Features.Briefs.Sheet;
using DayBrief.Service.Features.Technique;
using DayBrief.Service.Languages;

namespace DayBrief.Service.Features.Briefs;

/// <summary>The forms of one brief as a reader gets them, read back: page, sheet and JSON.</summary>
internal sealed partial class ShownForms
{
    /// <summary>Few encounters: what is said must agree whatever it is.</summary>
    private static readonly TechniqueDesk Desk = new() { Encounters = 64 };

    private ShownForms(MadeBrief made, Reader reader, string page)
    {
        (Reader, Html) = (reader, page);
        Page = WebUtility.HtmlDecode(Tags().Replace(page[page.IndexOf("<main", StringComparison.Ordinal)..], " "));
        // What was typed or reported has the units of whoever did, and remarks on an ascent quote it.
        string?[] quoted = [made.Brief.Observation?.Raw, made.Brief.Forecast?.Raw, made.Inputs.DayLimits, made.Inputs.EmergencyAndNotes(), .. Unknowns.Remarks(made, reader).Select(remark => remark.Text)];
        foreach (var raw in quoted.OfType<string>().SelectMany(text => text.Split('\n')).Where(text => text.Length > 0))
            Page = Page.Replace(raw, "", StringComparison.Ordinal);
        Values = [.. Value().Matches(page).Select(match => WebUtility.HtmlDecode(match.Groups[1].Value))];
        Sentence = WebUtility.HtmlDecode(SentenceOf().Match(page).Groups[1].Value);
        Pictures = [.. Described().Matches(page).Select(match => WebUtility.HtmlDecode(match.Groups[1].Value))];
        Sheet = PrintedSheet.Of(BriefSheet.Draw(made, reader, "https://example.org/fields/field", made.Inputs.PreparedAt));
        Json = JsonSerializer.SerializeToElement(BriefJson.Of(made), Infrastructure.Json.Line);
    }

    public Reader Reader { get; }

    public string Html { get; }

    /// <summary>The page without its tags, METAR, TAF and what the instructor typed.</summary>
    public string Page { get; }

    /// <summary>The four large figures.</summary>
    public IReadOnlyList<string> Values { get; }

    public string Sentence { get; }

    /// <summary>What the pictures say in words.</summary>
    public IReadOnlyList<string> Pictures { get; }

    public PrintedSheet Sheet { get; }

    public JsonElement Json { get; }

    public static async Task<ShownForms> OfAsync(MadeBrief made, string language, string units)
    {
        var reader = Reader.Of(made.Brief.Site, units, Language.Named(language));
        var technique = TechniqueView.Now(made.Brief, new(), reader.Figures, Desk);
        return new(made, reader, await StandalonePage.RenderAsync(made, reader, made.Inputs.PreparedAt, technique));
    }

    /// <summary>A figure as this reader's language writes it.</summary>
    public double Number(string text) => double.Parse(FigureOf().Match(text).Value.Replace("−", "-", StringComparison.Ordinal), Format());

    private NumberFormatInfo Format() => Reader.Language.Code == "de"
        ? new() { NumberDecimalSeparator = ",", NumberGroupSeparator = "." }
        : new() { NumberDecimalSeparator = ".", NumberGroupSeparator = "," };

    /// <summary>Also the mark of the hour that it is now, which only one row shows.</summary>
    [GeneratedRegex("<(style|script|svg|select)[^>]*>.*?</\\1>|<span class=\"now\">[^<]*</span>|<[^>]+>", RegexOptions.Singleline)]
    private static partial Regex Tags();

    [GeneratedRegex("<span class=\"value\">([^<]*)</span>")]
    private static partial Regex Value();

    [GeneratedRegex("<p class=\"sentence\">([^<]*)</p>")]
    private static partial Regex SentenceOf();

    [GeneratedRegex("<desc[^>]*>([^<]*)</desc>")]
    private static partial Regex Described();

    [GeneratedRegex("[−-]?[0-9][0-9.,]*")]
    private static partial Regex FigureOf();
}

internal static class Typed
{
    public static string? EmergencyAndNotes(this BriefInputs inputs) => string.Join('\n', new[]
    {
        inputs.InstructorNote, inputs.Notes?.BeforeSolo, inputs.Notes?.LocalSolo, inputs.Notes?.CrossCountry, inputs.Site.StandingNotes, inputs.Site.EmergencyLine,
    }.Where(text => !string.IsNullOrEmpty(text)));
}
