using System.Text.Json;
using DayBrief.Service.Features.People;
using DayBrief.Service.Features.Soundings;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Briefs.Revisions;

/// <summary>Who puts a name under a brief.</summary>
/// <param name="Id">Of the person, or of the key.</param>
/// <param name="Name">As readers see it.</param>
/// <param name="ByKey">A program, not a person.</param>
internal sealed record Signer(string Id, string Name, bool ByKey = false);

/// <summary>What came of a wish to sign: the revision, or the version that somebody has kept since.</summary>
internal sealed record SignOutcome(Revision? Revision, Draft? Newer);

/// <summary>Signs, amends, withdraws. What is acknowledged is on the disk: the revision, its line of the audit log and what is to follow
/// from it, in one transaction. Nothing that follows can undo it.</summary>
internal sealed class Signing(
    BriefStore briefs, RevisionStore revisions, DayHeadStore heads, SoundingStore soundings, BriefDesk desk, AuditLog audit,
    FollowUp followUp)
{
    private readonly Lock _signing = new();

    /// <summary>Freezes a draft as the next revision of its field and day, in place of what held there. Signing the same draft
    /// twice gives the same revision.</summary>
    /// <param name="id">The brief.</param>
    /// <param name="version">The version of the draft that the signer saw.</param>
    /// <param name="signer">Who signs.</param>
    /// <param name="reason">Why it is amended; needed from the second revision of a field and day on.</param>
    /// <exception cref="InvalidInputException">The draft makes no brief yet, the reason is missing, or it was signed for another
    /// field or day.</exception>
    public async Task<SignOutcome> SignAsync(string id, int version, Signer signer, string? reason)
    {
        BriefLimits.CheckReason(reason);
        Revision revision;
        Announcement told;
        lock (_signing)
        {
            var draft = briefs.Find(id) ?? throw InvalidInputException.Field("id", $"No brief is kept under \"{id}\".");
            var (own, head) = (revisions.Latest(id), heads.Find(draft.SiteId, draft.Date));
            if (own?.DraftVersion == draft.Version && own.Id == head?.RevisionId && !head.IsWithdrawn)
                return new(own, null);
            if (draft.Version != version)
                return new(null, draft);
            revision = Freeze(draft, head, signer, Checked(draft, own, head, reason));
            told = new(
                revision.Number == 1 ? AnnouncementKind.Published : AnnouncementKind.Amended,
                id, revision.SiteId, revision.Date, revision.Number, signer.Name, revision.SignedAt);
            revisions.Add(revision, collection =>
            {
                Outbox.Put(collection, told);
                audit.Signed(collection, signer, revision);
            });
        }

        await followUp.NowAsync(told);
        return new(revision, null);
    }

    /// <summary>Takes a brief back; its readers see that and why.</summary>
    /// <exception cref="InvalidInputException">Nothing was signed, another brief has taken its place, or the reason is missing.</exception>
    public void Withdraw(string id, Signer signer, string? reason)
    {
        var latest = revisions.Latest(id) ?? throw InvalidInputException.Field("id", "Nothing has been signed that could be withdrawn.");
        if (heads.Find(latest.SiteId, latest.Date) is { } head && head.BriefId != id)
            throw InvalidInputException.Field("id", $"Another brief has taken its place already: revision {head.Number}, signed by {head.SignedBy}. Withdraw that one (/desk/{head.BriefId}).");
        BriefLimits.CheckReason(reason);
        if (string.IsNullOrWhiteSpace(reason))
            throw InvalidInputException.Field("reason", "Say why it is withdrawn: its readers see it.");
        var withdrawal = new Withdrawal(signer.Name, desk.Now, reason.Trim());
        revisions.Withdraw(latest, withdrawal, collection =>
        {
            Outbox.Put(collection, new(AnnouncementKind.Withdrawn, id, latest.SiteId, latest.Date, latest.Number, signer.Name, withdrawal.At));
            audit.Withdrew(collection, signer, id, withdrawal.Reason);
        });
        followUp.Wake();
    }

    private static string? Checked(Draft draft, Revision? own, DayHead? head, string? reason)
    {
        if (draft.Demonstration)
            throw InvalidInputException.Field("id", "A demonstration day is invented and cannot be signed.");
        if (own is not null && (own.SiteId, own.Date) != (draft.SiteId, draft.Date))
            throw InvalidInputException.Field("id", $"This brief was signed for {own.SiteId}, {own.Date:yyyy-MM-dd}, and stays with that field and day. Withdraw it there, and begin a new brief for the other.");
        if (head is null || !string.IsNullOrWhiteSpace(reason))
            return reason?.Trim();
        throw head.BriefId == draft.Id
            ? InvalidInputException.Field("reason", "Say why it is amended: its readers see it.")
            : InvalidInputException.Field("reason", $"For this field and day {head.SignedBy} has signed revision {head.Number} already. Say why this one takes its place: its readers see it.");
    }

    private Revision Freeze(Draft draft, DayHead? head, Signer signer, string? reason)
    {
        var made = desk.OfDraft(draft) ?? throw InvalidInputException.Field("id", "The draft does not make a brief yet; see what is marked in it.");
        AscentAnswers.ThrowIfOpen(made.Inputs, desk.Sounding(made.Inputs));
        var before = head is null ? null : revisions.Find(head.BriefId, head.Number);
        return new Revision
        {
            BriefId = draft.Id,
            Number = (head?.Place ?? 0) + 1,
            SiteId = draft.SiteId,
            Date = draft.Date,
            SignedBy = signer.Name,
            SignedById = signer.Id,
            SignedAt = desk.Now,
            Reason = head is null ? null : reason,
            DraftVersion = draft.Version,
            ProgramVersion = Revision.ThisProgram,
            Inputs = made.Inputs,
            SoundingHash = Revision.HashOf(soundings.Bytes(made.Inputs.SoundingId)),
            Content = ContentOf(made),
            PreviousHash = before?.Hash,
            Replaces = before?.BriefId is { } other && other != draft.Id ? other : null,
        }.Sealed();
    }

    /// <summary>The brief as the API gives it, without how it stands: that changes after the signature.</summary>
    internal static string ContentOf(MadeBrief made) => JsonSerializer.Serialize(BriefJson.Of(made with { Standing = null }), Json.Line);
}
