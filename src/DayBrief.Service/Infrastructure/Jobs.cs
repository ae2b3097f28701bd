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
        // One of its own for each service: the library's default is shared by all in a process, as tests run them.
        services.AddSingleton<JobStorage>(_ => new InMemoryStorage(new InMemoryStorageOptions { MaxExpirationTime = TimeSpan.FromHours(6) }));
        services.AddHangfire(jobs => jobs
            .SetDataCompatibilityLevel(CompatibilityLevel.Version_180)
            .UseSimpleAssemblyNameTypeSerializer()
            .UseRecommendedSerializerSettings());
        services.AddHangfireServer(server => (server.WorkerCount, server.Queues) = (1, [Computing]));
        services.AddHangfireServer(server => (server.WorkerCount, server.Queues) = (2, [ByTheClock]));
    }
}
