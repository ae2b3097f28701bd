using System.Globalization;
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

    // The same bytes always read the same, and the desk asks for them at every change.
    private readonly Remembered<string, IReadOnlyList<SoundingSource>> _contents = new(20);
    private readonly Remembered<string, AscentFacts?> _facts = new(100);
    private readonly Remembered<(string Id, int? Index, string Zone, DateOnly Date), Sounding> _chosen = new(20);

    /// <summary>Reads, checks and keeps an ascent. The same bytes get the same id.</summary>
    /// <param name="content">The ascent as it came.</param>
    /// <param name="name">How it is called.</param>
    /// <exception cref="InvalidSoundingException">It cannot be used; nothing is kept.</exception>
    public StoredSounding Save(ReadOnlyMemory<byte> content, string? name)
    {
        var sounding = SoundingReader.Read(content, name);
        return new(Keep(IdOf(content), content, name, sounding.Source, fetched: false), sounding);
    }

    /// <summary>Checks and keeps an ascent, unless it is kept already; its id.</summary>
    /// <param name="content">The ascent as it came.</param>
    /// <param name="name">How it is called.</param>
    /// <param name="fetched">The service fetched it by itself.</param>
    /// <exception cref="InvalidSoundingException">It cannot be used; nothing is kept.</exception>
    public string Keep(ReadOnlyMemory<byte> content, string? name, bool fetched = false)
    {
        var id = IdOf(content);
        return IsKept(id) ? id : Keep(id, content, name, SoundingReader.Read(content, name).Source, fetched);
    }

    private string Keep(string id, ReadOnlyMemory<byte> content, string? name, SoundingSource source, bool fetched)
    {
        database.Write(Collection, soundings =>
        {
            if (soundings.FindById(id) is not null)
                return;
            soundings.EnsureIndex("receivedAt");
            soundings.Insert(new BsonDocument
            {
                ["_id"] = id,
                ["name"] = name,
                ["content"] = content.ToArray(),
                ["receivedAt"] = clock.GetUtcNow().ToUnixTimeMilliseconds(),
                ["fetched"] = fetched,
                ["station"] = source.Station,
                ["validAt"] = source.ValidAt?.ToString("O", CultureInfo.InvariantCulture),
                ["format"] = source.Format,
            });
        });
        return id;
    }

    /// <summary>What these bytes are kept under.</summary>
    public static string IdOf(ReadOnlyMemory<byte> content) => Convert.ToHexStringLower(SHA256.HashData(content.Span))[..16];

    /// <summary>The ascents that came last, the latest first.</summary>
    public IReadOnlyList<KeptAscent> Newest(int most) =>
        [.. database.Collection(Collection).Query().OrderByDescending("receivedAt").Limit(most).ToEnumerable().Select(Ascent)];

    /// <summary>A kept ascent; of several in its file the first.</summary>
    public StoredSounding? Find(string id) =>
        Content(id) is { } kept ? new(id, SoundingReader.Read(kept.Content, kept.Name)) : null;

    /// <summary>The ascents of a kept file, for a choice; empty when nothing is kept under the id.</summary>
    public IReadOnlyList<SoundingSource> Contents(string id) =>
        IsKept(id)
            ? _contents.Of(id, () =>
            {
                var (content, name) = Content(id)!.Value;
                return SoundingReader.Contents(content, name);
            })
            : [];

    /// <summary>By what people tell a kept ascent apart; null when nothing is kept under the id, or nothing that this version of the
    /// program can use.</summary>
    public AscentFacts? Facts(string id) =>
        IsKept(id)
            ? _facts.Of(id, () =>
            {
                var (content, name) = Content(id)!.Value;
                try
                {
                    return AscentFacts.Of(id, content, name);
                }
                catch (InvalidSoundingException)
                {
                    return null;
                }
            })
            : null;

    /// <summary>A kept ascent as it came, byte for byte; empty when nothing is kept under the id.</summary>
    public byte[] Bytes(string id) => Content(id)?.Content ?? [];

    /// <summary>The kept ascent that a day uses, as <see cref="AscentChoice"/> says; null when nothing is kept under the id.</summary>
    public Sounding? Choose(string id, int? index, Site site, DateOnly date) => IsKept(id)
        ? _chosen.Of((id, index, site.TimeZone.Id, date), () =>
        {
            var (content, name) = Content(id)!.Value;
            return AscentChoice.For(content, name, index, site, date);
        })
        : null;

    private static KeptAscent Ascent(BsonDocument kept) => new(
        kept["_id"].AsString,
        kept["name"].AsString,
        kept["station"].AsString,
        kept["validAt"].AsString is { } valid ? DateTimeOffset.Parse(valid, CultureInfo.InvariantCulture) : null,
        kept["format"].AsString,
        DateTimeOffset.FromUnixTimeMilliseconds(kept["receivedAt"].AsInt64),
        kept["fetched"] is { IsBoolean: true, AsBoolean: true });

    /// <summary>Removes the ascents that came before a moment and that nothing refers to.</summary>
    public int Forget(DateTimeOffset before, IReadOnlySet<string> referred)
    {
        var count = 0;
        database.Write(Collection, soundings =>
        {
            var old = soundings.Find(Query.LT("receivedAt", before.ToUnixTimeMilliseconds())).Select(found => found["_id"].AsString);
            foreach (var id in old.Where(id => !referred.Contains(id)).ToArray())
                count += soundings.Delete(id) ? 1 : 0;
        });
        return count;
    }

    /// <summary>Whether an ascent is kept under the id.</summary>
    public bool IsKept(string id) => database.Collection(Collection).Exists(Query.EQ("_id", id));

    private (byte[] Content, string? Name)? Content(string id) =>
        database.Collection(Collection).FindById(id) is { } found ? (found["content"].AsBinary, found["name"].AsString) : null;
}

/// <summary>An ascent and the name it is kept under.</summary>
internal sealed record StoredSounding(string Id, Sounding Sounding);

/// <summary>What there is to choose from: where and when an ascent was made, and when it came.</summary>
internal sealed record KeptAscent(
    string Id, string? Name, string? Station, DateTimeOffset? ValidAt, string? Format, DateTimeOffset ReceivedAt, bool IsFetched);
