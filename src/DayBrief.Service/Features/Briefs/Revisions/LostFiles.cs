using DayBrief.Service.Features.Soundings;

namespace DayBrief.Service.Features.Briefs.Revisions;

/// <summary>What a stop, an earlier version or a damaged store left out: plain files of signed revisions, made again from the store, which is
/// what counts; and ascents that only the files still have.</summary>
internal sealed class LostFiles(DayHeadStore heads, RevisionStore revisions, SoundingStore soundings, PublishedFiles files, TimeProvider clock)
{
    /// <summary>Revisions without files, as things that are to follow. No revision is read to see it.</summary>
    public IReadOnlyList<OutboxEntry> Entries() =>
    [
        .. from one in heads.All()
           where !files.Has(one.SiteId, one.Date, one.BriefId, one.Number)
           let told = new Announcement(AnnouncementKind.Amended, one.BriefId, one.SiteId, one.Date, one.Number, null, clock.GetUtcNow())
           select new OutboxEntry { Told = told, Follower = Follower.Files, NextAt = told.At },
    ];

    /// <summary>Takes back from the files the ascents that a damaged store has lost. Revisions are read one after another.</summary>
    public void TakeBackAscents()
    {
        foreach (var (_, _, briefId, number) in heads.All().ToArray())
        {
            if (revisions.Find(briefId, number) is { } revision && !soundings.IsKept(revision.Inputs.SoundingId))
                TakeBack(revision);
        }
    }

    private void TakeBack(Revision revision)
    {
        try
        {
            if (files.Read(revision, ".ascent") is { Length: > 0 } ascent)
                soundings.Keep(ascent, null);
        }
        catch (NotAsSignedException)
        {
            // Another file than was signed brings nothing back; verify-signed lists it.
        }
    }
}
