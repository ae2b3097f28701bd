using DayBrief.Service.Features.People;

namespace DayBrief.Service.Features.Actuals;

/// <summary>What really happened, written down at the launch point: a page for its phone, and the same for programs.</summary>
internal static class ActualsFeature
{
    public static void AddActuals(this IServiceCollection services) => services.AddSingleton<ActualStore>();

    public static void MapActuals(this WebApplication app, RouteGroupBuilder api)
    {
        KeepActuals.Map(api.MapGroup("/days/{site}/{date}/actuals").WithTags("Actuals").RequireAuthorization(Access.Observer));
        ActualsPages.Map(app.MapGroup("/fields/{site}/actuals").ExcludeFromDescription().RequireAuthorization(Access.Observer).AskReaderCode(context => context.GetRouteValue("site") as string));
    }
}
