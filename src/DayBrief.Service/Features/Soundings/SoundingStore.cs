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

    /// <summary>A kept ascent; of several in its file the first.</summary>
    public StoredSounding? Find(string id) =>
        Content(id) is { } kept ? new(id, SoundingReader.Read(kept.Content, kept.Name)) : null;

    /// <summary>The ascents of a kept file, for a choice; empty when nothing is kept under the id.</summary>
    public IReadOnlyList<SoundingSource> Contents(string id) =>
        Content(id) is { } kept ? SoundingReader.Contents(kept.Content, kept.Name) : [];

    /// <summary>The ascent for a day: the one chosen, else the one nearest to the morning; where the file holds the hours of a
    /// forecast (a table or JSON with times), the air aloft is the afternoon's.</summary>
    public Sounding? Choose(string id, int? index, DateTimeOffset morning, DateTimeOffset afternoon)
    {
        if (Content(id) is not { } kept)
            return null;
        if (index is { } chosen)
        {
            var count = SoundingReader.Contents(kept.Content, kept.Name).Count;
            return chosen < count
                ? SoundingReader.Read(kept.Content, kept.Name, chosen)
                : throw InvalidInputException.Field("ascentIndex", $"The input holds {count} ascents, numbered from 0; there is no {chosen}.");
        }

        var early = SoundingReader.Read(kept.Content, kept.Name, morning);
        if (early.Source.Format is not ("CSV" or "JSON") || early.Source.ValidAt is not { } at)
            return early;
        var late = SoundingReader.Read(kept.Content, kept.Name, afternoon);
        return late.Source.ValidAt - at is { } apart && apart > TimeSpan.FromHours(2) && apart < TimeSpan.FromHours(18)
            ? ForecastAloft.Compose(early, late)
            : early;
    }

    private (byte[] Content, string? Name)? Content(string id) =>
        database.Collection(Collection).FindById(id) is { } found ? (found["content"].AsBinary, found["name"].AsString) : null;
}

/// <summary>An ascent and the name it is kept under.</summary>
internal sealed record StoredSounding(string Id, Sounding Sounding);
