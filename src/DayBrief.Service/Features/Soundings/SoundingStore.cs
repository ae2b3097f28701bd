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

    /// <summary>A kept ascent; where its file holds several, the one nearest to a time, else the first.</summary>
    public StoredSounding? Find(string id, DateTimeOffset? nearestTo = null)
    {
        if (database.Collection(Collection).FindById(id) is not { } found)
            return null;
        var (content, name) = (found["content"].AsBinary, found["name"].AsString);
        return new(id, nearestTo is { } time ? SoundingReader.Read(content, name, time) : SoundingReader.Read(content, name));
    }
}

/// <summary>An ascent and the name it is kept under.</summary>
internal sealed record StoredSounding(string Id, Sounding Sounding);
