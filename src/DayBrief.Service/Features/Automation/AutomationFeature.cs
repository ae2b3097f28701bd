using DayBrief.Service.Features.Arrivals;
using DayBrief.Service.Features.Automation.Fetching;
using DayBrief.Service.Features.Automation.Settings;
using DayBrief.Service.Features.Automation.Status;
using DayBrief.Service.Features.Automation.Work;
using DayBrief.Service.Features.Briefs.Revisions;

namespace DayBrief.Service.Features.Automation;

/// <summary>What the service does by itself: fetch, prepare, remind, watch, back up, remove; and the page that shows it.</summary>
internal static class AutomationFeature
{
    public static void AddAutomation(this IServiceCollection services)
    {
        services.AddArrivals();
        services.AddSingleton(new FetchLimits());
        services.AddSingleton<AddressFetcher>();
        services.AddSingleton<UpkeepSettings>();
        services.AddSingleton<InstallationSchedule>();
        services.AddSingleton<RunLedger>();
        services.AddSingleton<SiteDays>();
        services.AddSingleton<DropFolders>();
        services.AddSingleton<StatusDesk>();
        services.AddTransient<SoundingIntake>();
        services.AddTransient<FetchSounding>();
        services.AddTransient<TakeDropFolder>();
        services.AddTransient<FetchReports>();
        services.AddTransient<WatchDay>();
        services.AddTransient<PrepareDraft>();
        services.AddTransient<RemindToSign>();
        services.AddTransient<BackUp>();
        services.AddTransient<PurgeOld>();
        services.AddTransient<AllWork>();
        services.AddTransient<DueRuns>();
        services.AddTransient<RunSlot>();
        services.AddTransient<ClockTick>();
        services.AddHostedService<StartClock>();
        services.AddSingleton<IFollow, FollowSignatures>();
    }

    public static void MapAutomation(this WebApplication app, RouteGroupBuilder api)
    {
        ShowStatus.Map(app, api);
        AskForRun.Map(app);
        FollowAgain.Map(app);
        SetAutomation.Map(app);
    }
}
