namespace DayBrief.Service.Features.Soundings;

/// <summary>Ascents in, analyses out.</summary>
internal static class SoundingsFeature
{
    public static void AddSoundings(this IServiceCollection services) => services.AddSingleton<SoundingStore>();

    public static void MapSoundings(this RouteGroupBuilder api)
    {
        var soundings = api.MapGroup("").WithTags("Soundings");
        UploadSounding.Map(soundings);
        ShowSounding.Map(soundings);
        AnalyseSounding.Map(soundings);
    }
}
