using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Features.People;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Infrastructure;
using DayBrief.Service.Infrastructure.Journals;

namespace DayBrief.Service.Features.Briefs;

/// <summary>Briefs: made from an ascent, signed, shown on a phone, printed on a sheet, read by programs.</summary>
internal static class BriefsFeature
{
    public static void AddBriefs(this IServiceCollection services)
    {
        services.AddSites();
        services.AddSingleton(provider => new SiteUse(site =>
            provider.GetRequiredService<BriefStore>().IsFor(site) || provider.GetRequiredService<RevisionStore>().IsFor(site)));
        services.AddSingleton<BriefStore>();
        services.AddSingleton<DayHeadStore>();
        services.AddSingleton(parts => new JournalKey(parts.GetRequiredService<DataFolder>(), parts.GetService<IConfiguration>()?[JournalKey.Setting]));
        services.AddSingleton<Journal>();
        services.AddSingleton<SignedJournal>();
        services.AddSingleton<SignedCheck>();
        services.AddSingleton<RevisionStore>();
        services.AddSingleton<PublishedFiles>();
        services.AddSingleton<Announcements>();
        services.AddHttpContextAccessor();
        services.AddSingleton<ComputingTime>();
        services.AddSingleton<BriefDesk>();
        services.AddSingleton<CurrentBrief>();
        services.AddSingleton<Signing>();
        services.AddSingleton<BriefPages>();
        services.AddSingleton<DemonstrationDays>();
        services.AddSingleton<FirstSteps>();
        services.AddSingleton<Outbox>();
        services.AddSingleton<LostFiles>();
        services.AddSingleton<IFollow, TellPhones>();
        services.AddSingleton<IFollow, WriteSignedFiles>();
        services.AddSingleton<FollowUp>();
        services.AddHostedService(parts => parts.GetRequiredService<FollowUp>());
    }

    public static void MapBriefs(this WebApplication app, RouteGroupBuilder api)
    {
        var briefs = api.MapGroup("").WithTags("Briefs").AskReaderCode(SiteOf).HideDrafts();
        CreateBrief.Map(briefs);
        ShowBrief.MapApi(briefs);
        SignByApi.Map(briefs);
        var pages = app.MapGroup("").AskReaderCode(SiteOf).HideDrafts();
        ShowBrief.MapPages(pages);
        ListBriefs.Map(app);
        ShowFirstSteps.Map(app);
        PrintBrief.Map(pages);
        PrintTechnique.Map(pages);
        ShowSignedFile.Map(pages);
    }

    /// <summary>The site whose brief a route shows: of the brief that it names, of the site that it names, else of today's.</summary>
    internal static string? SiteOf(HttpContext context)
    {
        if (!HttpMethods.IsGet(context.Request.Method) && !HttpMethods.IsHead(context.Request.Method))
            return null;
        var parts = context.RequestServices;
        return context.GetRouteValue("id") is string id
            ? parts.GetRequiredService<BriefDesk>().Find(id)?.Inputs.Site.Id
            : parts.GetRequiredService<CurrentBrief>().For(context.GetRouteValue("site") as string, context)?.Inputs.Site.Id;
    }
}
