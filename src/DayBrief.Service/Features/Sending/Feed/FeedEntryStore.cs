using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.Sending.Mail;
using DayBrief.Service.Features.Sending.Notices;
using DayBrief.Service.Infrastructure;
using DayBrief.Service.Languages;
using LiteDB;

namespace DayBrief.Service.Features.Sending.Feed;

/// <summary>The words of feed entries. Made once and kept: thirty days need not be computed again after a restart, and an entry
/// says the same as before, or that another has taken its place.</summary>
internal sealed class FeedEntryStore(Database database, BriefDesk desk)
{
    private const string Collection = "feedEntries";

    /// <summary>Title and summary.</summary>
    public (string Title, string Summary) TextOf(Notice notice, Language language)
    {
        var key = $"{notice.Id}|{language.Code}";
        if (database.Collection(Collection).FindById(key) is { } known)
            return (known["title"].AsString, known["summary"].AsString);
        var text = NoticeText.Of(notice, desk.Of(notice.Revision), language);
        var summary = Summary(text, language);
        database.Write(Collection, entries => entries.Upsert(new BsonDocument { ["_id"] = key, ["title"] = text.Subject, ["summary"] = summary }));
        return (text.Subject, summary);
    }

    private static string Summary(NoticeText text, Language language)
    {
        string?[] lines =
        [
            text.Signed,
            text.Warning,
            text.Reason is { } reason ? language.Say($"Why: {reason}") : null,
            text.Sentence,
            text.Figures.Count > 0 ? string.Join("; ", text.Figures.Select(figure => $"{figure.Name} {figure.Value}")) + "." : null,
            .. text.Changes.Select(change => MailText.Change(change, language)),
            language[Advice.Standing],
        ];
        return string.Join('\n', lines.OfType<string>());
    }
}
