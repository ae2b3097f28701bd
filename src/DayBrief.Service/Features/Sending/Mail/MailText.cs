using System.Text;
using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Features.Sending.Notices;
using DayBrief.Service.Languages;

namespace DayBrief.Service.Features.Sending.Mail;

/// <summary>A notice as plain text.</summary>
internal static class MailText
{
    public static string Of(NoticeText notice, string? link, string site, Language language)
    {
        var text = new StringBuilder();
        Paragraph(text, notice.Subject, notice.Signed);
        Paragraph(text, notice.Warning);
        Paragraph(text, notice.Reason is { } reason ? language.Say($"Why: {reason}") : null);
        Paragraph(text, notice.Sentence);
        Paragraph(text, [.. notice.Figures.Select(figure => figure.Detail.Length > 0 ? $"{figure.Name}: {figure.Value} ({figure.Detail})" : $"{figure.Name}: {figure.Value}")]);
        List(text, language["What changed"], notice.Changes.Select(change => Change(change, language)));
        List(text, language["Cautions"], notice.Cautions.Select(caution => $"{caution.Title}. {caution.Text}"));
        Paragraph(text, link is null ? null : language.Say($"The brief as it stands now: {link}"));
        Paragraph(text, language[Advice.Standing]);
        Paragraph(text, language.Say($"You get this because {site} has your address for its briefs. Whoever looks after its settings takes it out."));
        return text.ToString();
    }

    /// <summary>"Climb: 4.5 kt instead of 3.5 kt".</summary>
    internal static string Change(RevisionChange change, Language language) => change switch
    {
        { Before: { } before, After: { } after } => language.Say($"{language[change.What]}: {after} (was {before})"),
        { After: { } added } => $"{language[change.What]}: {language.Say($"new: {added}")}",
        _ => $"{language[change.What]}: {language.Say($"no longer: {change.Before}")}",
    };

    private static void Paragraph(StringBuilder text, params string?[] lines)
    {
        var said = lines.OfType<string>().ToArray();
        if (said.Length == 0)
            return;
        foreach (var line in said)
            text.Append(line).Append("\r\n");
        text.Append("\r\n");
    }

    private static void List(StringBuilder text, string title, IEnumerable<string> entries)
    {
        var lines = entries.ToArray();
        if (lines.Length > 0)
            Paragraph(text, [$"{title}:", .. lines.Select(line => $"- {line}")]);
    }
}
