namespace DayBrief.Service.Features.Desk;

/// <summary>Where the instructor on duty prepares, signs, amends and withdraws.</summary>
internal static class DeskFeature
{
    public static void AddDesk(this IServiceCollection services)
    {
        services.AddSingleton<Keeping>();
        services.AddSingleton<AscentChooser>();
        services.AddSingleton<AsBefore>();
        services.AddSingleton<DeskViews>();
    }

    public static void MapDesk(this WebApplication app)
    {
        OpenDesk.Map(app);
        KeepDraft.Map(app);
        SignDraft.Map(app);
        FollowDraft.Map(app);
        DiscardDraft.Map(app);
    }
}
