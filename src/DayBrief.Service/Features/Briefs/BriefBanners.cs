using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Briefs;

/// <summary>What must be seen before anything else.</summary>
internal sealed record Banner(string Text, bool IsWarning)
{
    /// <summary>Where its reader goes on from here, and how that is called; null for nowhere.</summary>
    public (string Address, string Words)? Link { get; init; }
}

internal static class BriefBanners
{
    /// <summary>Older than this at sunrise, an ascent no longer stands for the morning. Common practice, no source.</summary>
    private static readonly TimeSpan StaleAfter = TimeSpan.FromHours(12);

    public static IEnumerable<Banner> Of(MadeBrief made, DateTimeOffset now, Reader reader)
    {
        if (made.Inputs.Demonstration)
            yield return new(reader["Demonstration: field, ascent and day are invented."], IsWarning: false);
        else
            foreach (var banner in Signature(made, reader).Concat(Day(made, now, reader)))
                yield return banner;
        foreach (var doubt in AscentDoubts.Of(made, reader))
            yield return doubt;
        var brief = made.Brief;
        if (brief.AscentAgeAt(brief.Day.Sun.Sunrise ?? brief.Day.Sun.Noon) is { } age && age > StaleAfter)
            yield return new(reader.Say($"Old ascent: it was made {reader.Duration(age)} before sunrise, {reader.DateAndTime(brief.AscentValidAt!.Value)}."), IsWarning: true);
    }

    /// <summary>Withdrawn, replaced, amended, or not signed at all.</summary>
    private static IEnumerable<Banner> Signature(MadeBrief made, Reader reader)
    {
        if (made.Standing is not { } standing)
            yield break;
        if (standing is { Revision: { } shown, ReplacedBy: { } head })
        {
            yield return new(Replaced(shown, head, reader), IsWarning: true)
            {
                Link = ($"/briefs/{head.BriefId}", head.IsWithdrawn ? reader["To that one, which was withdrawn"] : reader["To the one that holds"]),
            };
        }

        if (standing.Withdrawal is { } withdrawal)
            yield return new(reader.Say($"Withdrawn {reader.Time(withdrawal.At)} by {withdrawal.By}: {withdrawal.Reason}"), IsWarning: true);
        if (standing.Revision is not { } revision)
            yield return new(reader["Draft: nobody has signed this."], IsWarning: true);
        else if (standing.IsReplaced)
            yield break;
        else if (revision is { Number: > 1 } && standing.Withdrawal is null)
            yield return new(reader.Say($"Amended {reader.Time(revision.SignedAt)} by {revision.SignedBy}: {revision.Reason}"), IsWarning: false);
    }

    private static string Replaced(Revision shown, DayHead head, Reader reader) => head.Reason is { } reason
        ? reader.Say($"Replaced {reader.Time(head.SignedAt)} by {head.SignedBy}: revision {head.Number} counts instead of revision {shown.Number}. {reason}")
        : reader.Say($"Replaced {reader.Time(head.SignedAt)} by {head.SignedBy}: revision {head.Number} counts instead of revision {shown.Number}.");

    /// <summary>For another day, or past its time.</summary>
    private static IEnumerable<Banner> Day(MadeBrief made, DateTimeOffset now, Reader reader)
    {
        if (made.Brief.Date != LocalClock.DateAt(now, made.Brief.Site.TimeZone))
            yield return new(reader.Say($"Not for today: this is the brief for {reader.Date(made.Brief.Date)}."), IsWarning: true);
        else if (DayFigures.ValidUntil(made) is { } until && now > until)
            yield return new(reader.Say($"Past its time: valid until {reader.Time(until)}."), IsWarning: true);
    }
}
