using System.Security.Cryptography;
using DayBrief.Days;
using DayBrief.Service.Infrastructure;
using DayBrief.Soundings;
using LiteDB;

namespace DayBrief.Service.Features.Soundings;

/// <summary>Keeps ascents as they came, byte for byte, and reads them anew when asked: what was entered is never lost.</summary>
internal sealed class SoundingStore(Database database, TimeProvider clock)
{
    private const string Collection = "soundings";

    /// <summary>Reads, checks and keeps an ascent. The same bytes get the same id.</summary>
    /// <exception cref="InvalidSoundingException">It cannot be used; nothing is kept.</exception>
    public StoredSounding Save(ReadOnlyMemory<byte> content, string? name)
    {
        var sounding = SoundingReader.Read(content, name);
        var id = Convert.ToHexStringLower(SHA256.HashData(content.Span))[..16];
        database.Write(Collection, soundings => soundings.Upsert(new BsonDocument
        {
            ["_id"] = id,
            ["name"] = name,
            ["content"] = content.ToArray(),
            ["receivedAt"] = clock.GetUtcNow().ToUnixTimeMilliseconds(),
        }));
        return new(id, sounding);
    }

    /// <summary>A kept ascent; of several in its file the first.</summary>
    public StoredSounding? Find(string id) =>
        Content(id) is { } kept ? new(id, SoundingReader.Read(kept.Content, kept.Name)) : null;

    /// <summary>The ascents of a kept file, for a choice; empty when nothing is kept under the id.</summary>
    public IReadOnlyList<SoundingSource> Contents(string id) =>
        Content(id) is { } kept ? SoundingReader.Contents(kept.Content, kept.Name) : [];

    /// <summary>The kept ascent that a day uses, as <see cref="AscentChoice"/> says; null when nothing is kept under the id.</summary>
    public Sounding? Choose(string id, int? index, Site site, DateOnly date) =>
        Content(id) is { } kept ? AscentChoice.For(kept.Content, kept.Name, index, site, date) : null;

    private (byte[] Content, string? Name)? Content(string id) =>
        database.Collection(Collection).FindById(id) is { } found ? (found["content"].AsBinary, found["name"].AsString) : null;
}

/// <summary>An ascent and the name it is kept under.</summary>
internal sealed record StoredSounding(string Id, Sounding Sounding);
