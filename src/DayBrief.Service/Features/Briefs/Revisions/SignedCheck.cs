
using DayBrief.Service.Features.People;

namespace DayBrief.Service.Features.Briefs.Revisions;

/// <summary>One thing found wrong.</summary>
/// <param name="Id">The revision, file or line of the audit log.</param>
/// <param name="Fault">How it is wrong.</param>
internal sealed record SignedFinding(string Id, SignedFault Fault);

/// <summary>Holds everything that was signed against the journal: texts, chain, the files beside the store, and the audit log.</summary>
internal sealed class SignedCheck(RevisionStore revisions, SignedJournal journal, PublishedFiles files, AuditLog? audit = null)
{
    private static readonly string[] Extensions = [".json", ".ascent", ".html", ".pdf"];

    public IReadOnlyList<SignedFinding> Run()
    {
        var kept = revisions.SignedSince(DateTimeOffset.UnixEpoch);
        var findings = new List<SignedFinding>();
        foreach (var revision in kept)
        {
            if (journal.FaultOf(revision) is { } fault)
                findings.Add(new(revision.Id, fault));
            else if (!FollowsItsBefore(revision))
                findings.Add(new(revision.Id, SignedFault.Chain));
            findings.AddRange(Files(revision));
        }

        var there = kept.Select(revision => revision.Id).ToHashSet();
        findings.AddRange(journal.Ids.Where(id => !there.Contains(id)).Order(StringComparer.Ordinal).Select(id => new SignedFinding(id, SignedFault.Missing)));
        if (audit?.AgainstJournal() is var (missing, foreign))
        {
            findings.AddRange(missing.Select(line => new SignedFinding(line, SignedFault.AuditMissing)));
            findings.AddRange(foreign.Select(line => new SignedFinding(line, SignedFault.AuditForeign)));
        }

        return findings;
    }

    /// <summary>The first of those that are kept may follow one that was forgotten.</summary>
    private bool FollowsItsBefore(Revision revision) => revisions.Before(revision) is not { } before || before.Hash == revision.PreviousHash || revision.PreviousHash is null;

    private IEnumerable<SignedFinding> Files(Revision revision)
    {
        foreach (var path in Extensions.Select(extension => (Extension: extension, Path: files.PathOf(revision, extension))))
        {
            var name = Path.GetFileName(path.Path);
            if (!File.Exists(path.Path))
                yield return new(name, SignedFault.FileMissing);
            else if (!journal.IsAsWritten(revision, path.Extension, File.ReadAllBytes(path.Path)))
                yield return new(name, SignedFault.File);
        }
    }
}
