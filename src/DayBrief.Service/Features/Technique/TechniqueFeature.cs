namespace DayBrief.Service.Features.Technique;

/// <summary>How to find, centre, hold and leave today's thermal, computed in the background.</summary>
internal static class TechniqueFeature
{
    public static void AddTechnique(this IServiceCollection services)
    {
        services.AddSingleton<TechniqueDesk>();
        services.AddTransient<ComputeTechnique>();
    }
}
