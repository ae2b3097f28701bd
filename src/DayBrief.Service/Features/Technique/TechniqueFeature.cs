using Hangfire;
using Hangfire.InMemory;

namespace DayBrief.Service.Features.Technique;

/// <summary>How to find, centre, hold and leave today's thermal, computed in the background.</summary>
internal static class TechniqueFeature
{
    public static void AddTechnique(this IServiceCollection services)
    {
        services.AddSingleton<TechniqueDesk>();
        services.AddTransient<ComputeTechnique>();
        services.AddHangfire(jobs => jobs
            .SetDataCompatibilityLevel(CompatibilityLevel.Version_180)
            .UseSimpleAssemblyNameTypeSerializer()
            .UseRecommendedSerializerSettings()
            .UseInMemoryStorage(new InMemoryStorageOptions { MaxExpirationTime = TimeSpan.FromHours(6) }));
        services.AddHangfireServer(server => server.WorkerCount = 1);
    }
}
