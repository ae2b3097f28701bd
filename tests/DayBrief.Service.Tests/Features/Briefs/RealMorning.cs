using System.Globalization;
using DayBrief.House;
using DayBrief.Service.Features.Briefs.Sheet;
using DayBrief.Service.Features.Sites;
using DayBrief.Soundings;

namespace DayBrief.Service.Features.Briefs;

/// <summary>Mornings to make briefs of: recorded ones of three climates (shared/cases/pairs, with the afternoon's temperature as the
/// maximum), the crowded days of the sheet, and invented ones of the repository.</summary>
internal static class RealMorning
{
    private static readonly (string File, DateOnly Date, double? MaxC, double Cloud)[] Invented =
    [
        ("broad-post-frontal.txt", new(2026, 5, 21), 17, 1),
        ("anticyclone-short-dry.csv", new(2026, 6, 24), 25, 0),
        ("strong-wind-streets.json", new(2026, 4, 3), 12, 2),
        ("stratus-no-thermals.csv", new(2026, 10, 20), null, 8),
        ("thunderstorm-risk.txt", new(2026, 7, 18), 29, 1),
    ];

    /// <summary>Every eighth recorded morning, and all of the others.</summary>
    public static IEnumerable<string> Names =>
        [.. Recorded().Where((_, i) => i % 8 == 0).Select(row => row[0]), .. CrowdedDay.All.Select(day => day.Name), .. Invented.Select(day => day.File)];

    /// <param name="name">One of <see cref="Names"/>.</param>
    /// <param name="usableClimbMs">What an invented morning's site asks of a usable thermal; null for the usual.</param>
    public static MadeBrief Make(string name, double? usableClimbMs = null)
    {
        if (CrowdedDay.All.Any(day => day.Name == name))
            return CrowdedDay.Named(name).Make();
        if (Invented.FirstOrDefault(day => day.File == name) is { File: not null } day)
            return Made(Demo.Path(name), Site("Europe/London", 52.24, -1.41, 118) with { UsableClimbMs = usableClimbMs }, day.Date, day.MaxC, day.Cloud, 5);
        var row = Recorded().Single(row => row[0] == name);
        double Number(int column) => double.Parse(row[column], CultureInfo.InvariantCulture);
        var zone = row[2] switch { "KNKX" => "America/Los_Angeles", "SGP97" => "America/Chicago", _ => "Europe/Kirov" };
        var at = DateTimeOffset.Parse(row[7], CultureInfo.InvariantCulture);
        return Made(
            Repository.Shared("cases", "pairs", row[2], $"{name}_morning.csv"),
            Site(zone, Number(3), Number(4), Number(5)),
            DateOnly.FromDateTime(at.AddHours(Number(6)).Date),
            Number(13),
            0,
            at.Hour);
    }

    private static IEnumerable<string[]> Recorded()
    {
        var path = Path.Combine(Repository.Root, "..", "shared", "cases", "pairs", "pairs.csv");
        return File.Exists(path)
            ? File.ReadLines(path).Skip(1).Select(line => line.Split(',')).Where(row => row[2] is "KNKX" or "SGP97" or "USKK" && row[13].Length > 0)
            : [];
    }

    private static SiteJson Site(string zone, double latitude, double longitude, double elevationM) => new()
    {
        Id = "field",
        Name = "Invented field",
        Latitude = latitude,
        Longitude = longitude,
        ElevationM = elevationM,
        TimeZone = zone,
        GroundCover = "crops",
        Runways = [new("09", 90, "grass"), new("27", 270, "grass")],
    };

    private static MadeBrief Made(string path, SiteJson site, DateOnly date, double? maxC, double cloud, int utcHour)
    {
        var inputs = new BriefInputs
        {
            SoundingId = Path.GetFileName(path),
            Site = site,
            Date = date,
            PreparedAt = new(date, new TimeOnly(utcHour, 30), TimeSpan.Zero),
            AscentLatitude = site.Latitude,
            AscentLongitude = site.Longitude,
            AscentElevationM = site.ElevationM,
            Assumptions = new() { MaxTemperatureC = maxC, CloudOktas = cloud, Ensemble = 30 },
        };
        return new(null, inputs, BriefDesk.Compute(inputs, SoundingReader.Read(File.ReadAllBytes(path), Path.GetFileName(path)))) { Standing = new(null, 0, null) };
    }
}
