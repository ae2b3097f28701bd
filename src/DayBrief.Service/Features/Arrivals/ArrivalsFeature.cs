namespace DayBrief.Service.Features.Arrivals;

/// <summary>What has come in by itself: ascents, reports, flags, reminders. Written by the automation, read by pages.</summary>
internal static class ArrivalsFeature
{
    public static void AddArrivals(this IServiceCollection services)
    {
        services.AddSingleton<ArrivalStore>();
        services.AddSingleton<ReportStore>();
        services.AddSingleton<FlagStore>();
        services.AddSingleton<ReminderStore>();
        services.AddSingleton<DayNews>();
        services.AddSingleton<ArrivalEvents>();
    }
}
