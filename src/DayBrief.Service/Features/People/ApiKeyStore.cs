using DayBrief.Service.Infrastructure;
using LiteDB;

namespace DayBrief.Service.Features.People;

/// <summary>Keeps the API keys, as hashes.</summary>
internal sealed class ApiKeyStore(Database database)
{
    private const string Collection = "apiKeys";

    /// <summary>How old "last used" may be: a write for every request would cost more than it tells.</summary>
    private static readonly TimeSpan UseNotedEvery = TimeSpan.FromMinutes(5);

    public bool Any() => database.Collection(Collection).Exists(Query.All());

    public IReadOnlyList<ApiKey> All() =>
        [.. database.Collection(Collection).FindAll().Select(Key).OrderByDescending(key => key.MadeAt)];

    /// <summary>Makes a key; the secret is given only here.</summary>
    public (ApiKey Key, string Secret) Make(string name, KeyScope scope, DateTimeOffset now, DateTimeOffset? expires)
    {
        var secret = $"daybrief_{Secret.New()}";
        var key = new ApiKey
        {
            Id = Guid.CreateVersion7(now).ToString("N"),
            Name = name,
            Scope = scope,
            Start = secret[..15],
            Hash = Secret.Hash(secret),
            MadeAt = now,
            ExpiresAt = expires,
        };
        database.Write(Collection, keys =>
        {
            keys.EnsureIndex("hash");
            keys.Insert(Document(key));
        });
        return (key, secret);
    }

    /// <summary>The key of that secret, whether or not it still works.</summary>
    public ApiKey? FindBySecret(string secret)
    {
        var hash = Secret.Hash(secret);
        return database.Collection(Collection).FindOne(Query.EQ("hash", hash)) is { } found && Secret.Matches(secret, found["hash"].AsString)
            ? Key(found)
            : null;
    }

    /// <summary>Null when there is no such key, or it is revoked already.</summary>
    public ApiKey? Revoke(string id, DateTimeOffset now) =>
        Change(id, key => key.RevokedAt is null ? key with { RevokedAt = now } : null);

    public void NoteUse(ApiKey key, DateTimeOffset now)
    {
        if (key.LastUsedAt is null || now - key.LastUsedAt >= UseNotedEvery)
            Change(key.Id, found => found with { LastUsedAt = now });
    }

    private ApiKey? Change(string id, Func<ApiKey, ApiKey?> change)
    {
        ApiKey? changed = null;
        database.Write(Collection, keys =>
        {
            if (keys.FindById(id) is not { } found || change(Key(found)) is not { } after)
                return;
            keys.Update(Document(after));
            changed = after;
        });
        return changed;
    }

    private static BsonDocument Document(ApiKey key) => new()
    {
        ["_id"] = key.Id,
        ["hash"] = key.Hash,
        ["key"] = System.Text.Json.JsonSerializer.Serialize(key, Json.Line),
    };

    private static ApiKey Key(BsonDocument document) =>
        System.Text.Json.JsonSerializer.Deserialize<ApiKey>(document["key"].AsString, Json.Line)!;
}
