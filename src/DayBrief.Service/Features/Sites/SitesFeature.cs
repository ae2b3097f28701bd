using DayBrief.Service.Features.People;

namespace DayBrief.Service.Features.Sites;

/// <summary>Sites: kept, edited on pages, taken out to a file and back, read and put by programs.</summary>
internal static class SitesFeature
{
    public static void AddSites(this IServiceCollection services) => services.AddSingleton<SiteStore>();

    public static void MapSites(this WebApplication app, RouteGroupBuilder api)
    {
        var pages = app.MapGroup("/sites").RequireAuthorization(Access.Administrator).ExcludeFromDescription();
        ListSites.Map(pages);
        ExportSites.Map(pages);
        EditSite.Map(pages);
        var forms = pages.MapGroup("").RequireForm();
        ImportSites.Map(forms);
        EditSite.MapForms(forms);
        RemoveSite.Map(forms);
        var programs = api.MapGroup("/sites").WithTags("Sites");
        ListSites.MapApi(programs);
        PutSite.MapApi(programs);
        RemoveSite.MapApi(programs);
    }
}
