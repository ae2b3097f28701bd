using LiteDB;
using Microsoft.Extensions.Diagnostics.HealthChecks;

namespace DayBrief.Service.Infrastructure;

/// <summary>Ready is who can read the store and write to it.</summary>
internal sealed class StoreHealth(Database database, TimeProvider clock) : IHealthCheck
{
    private const string Collection = "health";

    public Task<HealthCheckResult> CheckHealthAsync(HealthCheckContext context, CancellationToken cancellationToken = default)
    {
        try
        {
            var now = clock.GetUtcNow().ToUnixTimeMilliseconds();
            database.Write(Collection, rows => rows.Upsert(new BsonDocument { ["_id"] = "ready", ["at"] = now }));
            return Task.FromResult(database.Collection(Collection).FindById("ready")?["at"].AsInt64 is { } at && at >= now
                ? HealthCheckResult.Healthy()
                : HealthCheckResult.Unhealthy("What was written to the store cannot be read."));
        }
        catch (Exception cause) when (cause is IOException or LiteException or UnauthorizedAccessException or InvalidOperationException)
        {
            return Task.FromResult(HealthCheckResult.Unhealthy(cause.Message, cause));
        }
    }
}
