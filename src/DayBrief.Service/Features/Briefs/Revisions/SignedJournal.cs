using System.Collections.Concurrent;
using System.Text.Json;
using System.Text.Json.Nodes;
using DayBrief.Service.Infrastructure;
using DayBrief.Service.Infrastructure.Journals;

namespace DayBrief.Service.Features.Briefs.Revisions;

/// <summary>What was signed, apart from the store: against it the store and the files are held, and from it they can be made again.</summary>
internal sealed class SignedJournal
{
    private const string SignedKind = "signed";
    private const string FilesKind = "files";
    private const string ForgottenKind = "forgotten";
    private const string WithdrawnKind = "withdrawn";

    private readonly Journal _journal;
    private readonly ConcurrentDictionary<string, string> _hashes = new();
    private readonly ConcurrentDictionary<string, IReadOnlyDictionary<string, string>> _files = new();

    public SignedJournal(Journal journal)
    {
        _journal = journal;
        foreach (var entry in journal.Entries)
            Take(entry.Kind, entry.Id, entry.Content);
    }

    /// <summary>Nothing was ever signed under it: what the store has, an earlier version of the program signed.</summary>
    public bool IsNew => _journal.IsNew;

    /// <summary>Something was signed here once, whatever the store says.</summary>
    public bool HasSigned => !_hashes.IsEmpty;

    /// <summary>The revisions that must be there.</summary>
    public IReadOnlyCollection<string> Ids => [.. _hashes.Keys];

    public void Signed(Revision revision, bool atStart = false) =>
        Add(SignedKind, revision.Id, new() { ["text"] = revision.Text, ["hash"] = revision.Hash }, atStart);

    public void Written(Revision revision, IReadOnlyDictionary<string, string> hashes)
    {
        if (_files.TryGetValue(revision.Id, out var known) && known.Count == hashes.Count && hashes.All(hash => known.GetValueOrDefault(hash.Key) == hash.Value))
            return;
        Add(FilesKind, revision.Id, new(hashes.Select(hash => KeyValuePair.Create(hash.Key, (JsonNode?)hash.Value))));
    }

    public void Withdrawn(string briefId, Withdrawal withdrawal) =>
        Add(WithdrawnKind, briefId, new() { ["withdrawal"] = JsonSerializer.Serialize(withdrawal, Json.Line) });

    public void Forgotten(Revision revision) => Add(ForgottenKind, revision.Id, []);

    /// <summary>What was signed and not forgotten since, in the order of signing.</summary>
    public IReadOnlyList<Revision> Revisions() =>
    [
        .. _journal.Entries.Where(entry => entry.Kind == SignedKind && _hashes.GetValueOrDefault(entry.Id) == (string?)entry.Content["hash"])
            .Select(entry => Revision.Open((string)entry.Content["text"]!, (string)entry.Content["hash"]!)).DistinctBy(revision => revision.Id),
    ];

    /// <summary>The last withdrawal of each brief.</summary>
    public IReadOnlyDictionary<string, Withdrawal> Withdrawals() => _journal.Entries.Where(entry => entry.Kind == WithdrawnKind).GroupBy(entry => entry.Id)
        .ToDictionary(ofBrief => ofBrief.Key, ofBrief => JsonSerializer.Deserialize<Withdrawal>((string)ofBrief.Last().Content["withdrawal"]!, Json.Line)!);

    /// <summary>How a revision of the store differs from what was signed; null when it does not.</summary>
    public SignedFault? FaultOf(Revision revision) =>
        !revision.IsIntact ? SignedFault.Text
        : !_hashes.TryGetValue(revision.Id, out var hash) ? SignedFault.NotSigned
        : hash != revision.Hash ? SignedFault.Signature
        : null;

    /// <summary>Whether a file is as it was written when the revision was signed.</summary>
    public bool IsAsWritten(Revision revision, string extension, byte[] content) =>
        !_files.TryGetValue(revision.Id, out var hashes) || !hashes.TryGetValue(extension, out var hash) || hash == Revision.HashOf(content);

    private void Add(string kind, string id, JsonObject content, bool atStart = false)
    {
        _journal.Add(kind, id, content, atStart);
        Take(kind, id, content);
    }

    private void Take(string kind, string id, JsonObject content)
    {
        switch (kind)
        {
            case SignedKind:
                _hashes[id] = (string)content["hash"]!;
                break;
            case FilesKind:
                _files[id] = content.ToDictionary(hash => hash.Key, hash => (string)hash.Value!);
                break;
            case ForgottenKind:
                _hashes.TryRemove(id, out _);
                _files.TryRemove(id, out _);
                break;
        }
    }
}
