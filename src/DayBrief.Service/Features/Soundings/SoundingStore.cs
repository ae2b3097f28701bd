using System.Security.Cryptography;
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

    public StoredSounding? Find(string id) =>
        database.Collection(Collection).FindById(id) is { } found
            ? new(id, SoundingReader.Read(found["content"].AsBinary, found["name"].AsString))
            : null;
}

/// <summary>An ascent and the name it is kept under.</summary>
internal sealed record StoredSounding(string Id, Sounding Sounding);
