using System.Security.Cryptography;
using System.Text;
using LiteDB;

namespace DayBrief.Service.Infrastructure;

/// <summary>Which installation this is, for ids that other programs keep: drawn once, and never changed by a new address.</summary>
internal sealed class Installation
{
    private const string Collection = "installation";
    private const string Key = "identity";

    private readonly Guid _id;

    public Installation(Database database, TimeProvider clock)
    {
        database.Write(Collection, facts =>
        {
            if (facts.FindById(Key) is null)
                facts.Insert(new BsonDocument { ["_id"] = Key, ["id"] = new Guid(RandomNumberGenerator.GetBytes(16)), ["at"] = clock.GetUtcNow().ToUnixTimeMilliseconds() });
        });
        var kept = database.Collection(Collection).FindById(Key);
        (_id, Since) = (kept["id"].AsGuid, DateTimeOffset.FromUnixTimeMilliseconds(kept["at"].AsInt64));
    }

    /// <summary>When it was drawn.</summary>
    public DateTimeOffset Since { get; }

    /// <summary>A UUID for something of this installation: the same for the same name.</summary>
    /// <remarks>RFC 9562, version 8: bits of our own making, here of SHA-256.</remarks>
    public Guid IdOf(string name)
    {
        var bytes = SHA256.HashData([.. _id.ToByteArray(bigEndian: true), .. Encoding.UTF8.GetBytes(name)])[..16];
        bytes[6] = (byte)((bytes[6] & 0x0F) | 0x80);
        bytes[8] = (byte)((bytes[8] & 0x3F) | 0x80);
        return new(bytes, bigEndian: true);
    }
}
