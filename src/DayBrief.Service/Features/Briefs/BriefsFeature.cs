using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Features.Sites;

namespace DayBrief.Service.Features.Briefs;

/// <summary>Briefs: made from an ascent, signed, shown on a phone, printed on a sheet, read by programs.</summary>
internal static class BriefsFeature
{
    public static void AddBriefs(this IServiceCollection services)
    {
        services.AddSingleton<SiteStore>();
        services.AddSingleton<BriefStore>();
        services.AddSingleton<RevisionStore>();
        services.AddSingleton<PublishedFiles>();
        services.AddSingleton<Announcements>();
        services.AddSingleton<BriefDesk>();
        services.AddSingleton<CurrentBrief>();
        services.AddSingleton<Signing>();
        services.AddSingleton<BriefPages>();
        services.AddSingleton<DemonstrationDays>();
        services.AddHostedService<FinishSignedFiles>();
    }

    public static void MapBriefs(this WebApplication app, RouteGroupBuilder api)
    {
        var briefs = api.MapGroup("").WithTags("Briefs");
        CreateBrief.Map(briefs);
        ShowBrief.MapApi(briefs);
        SignByApi.Map(briefs);
        ShowBrief.MapPages(app);
        ListBriefs.Map(app);
        PrintBrief.Map(app);
        PrintTechnique.Map(app);
        ShowSignedFile.Map(app);
    }
}
