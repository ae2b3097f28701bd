using DayBrief.Service.Features.Soundings;
using DayBrief.Service.Infrastructure;
using DayBrief.Service.Languages;

namespace DayBrief.Service.Features.Briefs.Revisions;

/// <summary>Writes the plain files of a signed revision.</summary>
internal sealed class WriteSignedFiles(RevisionStore revisions, BriefDesk desk, SoundingStore soundings, PublishedFiles files, PublicAddress address) : IFollow
{
    public Follower Follower => Follower.Files;

    /// <exception cref="NotAsSignedException">What is not as it was signed gets no files that would say it was.</exception>
    public async Task FollowAsync(Announcement told)
    {
        if (revisions.Find(told.BriefId, told.Number) is not { } revision)
            return;
        var made = desk.Of(revision);
        var reader = Reader.Of(made.Brief.Site, null, Language.Named(made.Brief.Site.Language));
        var sheet = BriefSheet.Draw(made, reader, address.Link(PrintBrief.PathOf(made)), revision.SignedAt);
        files.Write(
            revision,
            soundings.Bytes(revision.Inputs.SoundingId),
            await StandalonePage.RenderAsync(made, reader, revision.SignedAt),
            PrintBrief.Pdf(made, sheet));
    }
}

/// <summary>Tells the open pages.</summary>
internal sealed class TellPhones(Announcements announcements) : IFollow
{
    public Follower Follower => Follower.Phones;

    public Task FollowAsync(Announcement told)
    {
        announcements.Tell(told);
        return Task.CompletedTask;
    }
}
