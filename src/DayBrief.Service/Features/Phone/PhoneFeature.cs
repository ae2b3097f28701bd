using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.People;

namespace DayBrief.Service.Features.Phone;

/// <summary>The brief on a phone: installed, kept for when there is no connection, told of every change, light or dark.</summary>
internal static class PhoneFeature
{
    public static void AddPhone(this IServiceCollection services) => services.AddSingleton<Following>();

    public static void UsePhone(this WebApplication app)
    {
        app.UsePageChoices();
        app.UseCopyMarks();
    }

    public static void MapPhone(this WebApplication app)
    {
        FollowBrief.Map(app.MapGroup("").AskReaderCode(BriefsFeature.SiteOf).HideDrafts());
        ShowManifest.Map(app);
        ServeWorker.Map(app);
        ShowOffline.Map(app);
    }
}
