using DayBrief.Service.Features.Sites;
using DayBrief.Service.Features.Soundings;

namespace DayBrief.Service.Features.Briefs;

/// <summary>Six invented mornings at an invented field, there from the first start; soundings/README.md says what each shows.</summary>
internal sealed class DemonstrationDays(SiteStore sites, SoundingStore soundings, BriefStore briefs)
{
    /// <summary>The one that a new install shows first.</summary>
    public const string First = "demo-broad";

    /// <summary>The invented field.</summary>
    public const string FieldId = "harrowmere";

    private static readonly SiteJson Field = new()
    {
        Id = FieldId,
        Name = "Harrowmere (invented)",
        Latitude = 52.24,
        Longitude = -1.41,
        ElevationM = 118,
        TimeZone = "Europe/London",
        GroundCover = "crops",
        Units = "feet-and-knots",
        Runways = [new("06", 58, "grass"), new("24", 238, "grass")],
        Terrain = "flat farmland",
    };

    private HashSet<string>? _own;

    private static readonly (string Id, string File, DateOnly Date, double? MaxC, double? Cloud, string Wetness)[] Days =
    [
        (First, "broad-post-frontal.txt", new(2026, 5, 21), 17, 1, "normal"),
        ("demo-short", "anticyclone-short-dry.csv", new(2026, 6, 24), 25, 0, "dry"),
        ("demo-spread", "spreading-out.csv", new(2026, 8, 12), 21, 2, "normal"),
        ("demo-thunder", "thunderstorm-risk.txt", new(2026, 7, 18), 29, 1, "normal"),
        ("demo-streets", "strong-wind-streets.json", new(2026, 4, 3), 12, 2, "normal"),
        ("demo-stratus", "stratus-no-thermals.csv", new(2026, 10, 20), null, 8, "wet"),
    ];

    /// <summary>Whether an ascent is one of its own.</summary>
    public bool Uses(string soundingId) => (_own ??= [.. Days.Select(day => briefs.Find(day.Id)?.Inputs?.SoundingId).OfType<string>()]).Contains(soundingId);

    /// <summary>Puts the demonstration into an empty store, to be computed when somebody looks; does nothing in one that has briefs.</summary>
    public void AddIfNew()
    {
        if (!briefs.IsEmpty)
            return;
        sites.Save(Field);
        foreach (var day in Days)
        {
            var file = Path.Combine(AppContext.BaseDirectory, "soundings", day.File);
            briefs.Save(
                day.Id,
                new()
                {
                    SoundingId = soundings.Keep(File.ReadAllBytes(file), day.File),
                    Site = Field with { GroundWetness = day.Wetness },
                    Date = day.Date,
                    PreparedBy = "the demonstration",
                    PreparedAt = new DateTimeOffset(day.Date, new TimeOnly(6, 30), TimeSpan.Zero),
                    AscentLatitude = 52.31,
                    AscentLongitude = -1.92,
                    AscentElevationM = 118,
                    Assumptions = new() { MaxTemperatureC = day.MaxC, CloudOktas = day.Cloud },
                    Demonstration = true,
                });
        }
    }
}
