using Hangfire;
using Hangfire.InMemory;

namespace DayBrief.Service.Infrastructure;

/// <summary>Work in the background, in two queues with workers of their own: a slow fetch holds up no computation.</summary>
/// <remarks>Kept in memory and forgotten at a restart; what must outlive one is in a store of ours.</remarks>
internal static class Jobs
{
    /// <summary>What runs by the clock and may wait for other machines.</summary>
    public const string ByTheClock = "clock";

    private const string Computing = "default";

    public static void AddJobs(this IServiceCollection services)
    {
        services.AddHangfire(jobs => jobs
            .SetDataCompatibilityLevel(CompatibilityLevel.Version_180)
            .UseSimpleAssemblyNameTypeSerializer()
            .UseRecommendedSerializerSettings()
            .UseInMemoryStorage(new InMemoryStorageOptions { MaxExpirationTime = TimeSpan.FromHours(6) }));
        services.AddHangfireServer(server => (server.WorkerCount, server.Queues) = (1, [Computing]));
        services.AddHangfireServer(server => (server.WorkerCount, server.Queues) = (2, [ByTheClock]));
    }
}
