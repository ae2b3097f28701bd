using DayBrief.Service.Infrastructure;
using LiteDB;

namespace DayBrief.Service.Features.People;

/// <summary>Counts failed sign-ins of a name, and makes the next one wait longer and longer. Kept, so that a restart helps nobody.</summary>
/// <remarks>Names are counted whether or not somebody has them, and only as hashes: people mistype their password there. The
/// pause is capped so that nobody can lock an instructor out for the morning; at the cap a name has fewer than the 100
/// attempts a day, NIST SP 800-63B, 5.2.2, allows in a row.</remarks>
internal sealed class SignInPauses(Database database, TimeProvider clock)
{
    public const int FreeAttempts = 5;

    private const string Collection = "signInPauses";

    private static readonly TimeSpan First = TimeSpan.FromSeconds(30);
    private static readonly TimeSpan Longest = TimeSpan.FromMinutes(15);
    private static readonly TimeSpan ForgottenAfter = TimeSpan.FromHours(24);

    /// <summary>How long a name must wait now; null when it need not.</summary>
    public TimeSpan? Left(string name) => Left(database.Collection(Collection).FindById(Id(name)), Now);

    /// <summary>Takes an attempt, counted as failed until <see cref="Clear"/>: many at once must not slip through together.</summary>
    /// <returns>How long to wait instead; null when the attempt may be made.</returns>
    public TimeSpan? Begin(string name)
    {
        TimeSpan? left = null;
        database.Write(Collection, pauses =>
        {
            pauses.EnsureIndex("last");
            pauses.DeleteMany(Query.LT("last", Now - (long)ForgottenAfter.TotalMilliseconds));
            var found = pauses.FindById(Id(name));
            left = Left(found, Now);
            if (left is null)
                pauses.Upsert(Counted(Id(name), (found?["count"].AsInt32 ?? 0) + 1, Now));
        });
        return left;
    }

    /// <summary>Forgets the failures of a name: signed in, or given a new password.</summary>
    public void Clear(string name) => database.Write(Collection, pauses => pauses.Delete(Id(name)));

    private long Now => clock.GetUtcNow().ToUnixTimeMilliseconds();

    private static string Id(string name) => Secret.Hash(Person.Plain(name));

    private static TimeSpan? Left(BsonDocument? found, long now) =>
        found is not null && found["until"].AsInt64 > now ? TimeSpan.FromMilliseconds(found["until"].AsInt64 - now) : null;

    private static BsonDocument Counted(string id, int count, long now) => new()
    {
        ["_id"] = id,
        ["count"] = count,
        ["last"] = now,
        ["until"] = count < FreeAttempts ? 0L : now + (long)Pause(count).TotalMilliseconds,
    };

    private static TimeSpan Pause(int failures)
    {
        var doublings = Math.Min(failures - FreeAttempts, 10);
        var pause = First * Math.Pow(2, doublings);
        return pause < Longest ? pause : Longest;
    }
}
