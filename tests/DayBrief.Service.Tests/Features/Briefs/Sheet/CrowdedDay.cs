using DayBrief.House;
using DayBrief.Service.Features.Sites;
using DayBrief.Soundings;

namespace DayBrief.Service.Features.Briefs.Sheet;

/// <summary>A real ascent with an invented METAR and TAF of thunder, gusts and fog, and an instructor who writes a lot: as much as
/// a sheet ever has to hold. Ascents: shared/soundings, each with its source in index.json.</summary>
internal sealed record CrowdedDay(string Name, string File, DateOnly Date, double Latitude, double Longitude, double ElevationM, string Zone, int ReportHour)
{
    private const string Long = "Bring your logbook and your medical, read the notices on the board, and ask whoever has flown before you how the circuit was, because the wind in the trees on the approach is not what it was last week and the winch cable has been shortened by the length of the new taxiway; ";

    public static IReadOnlyList<CrowdedDay> All { get; } =
    [
        new("Sao Paulo", "original/fm35_saopaulo_20230223_12z.txt", new(2023, 2, 23), -23.52, -46.63, 722, "America/Sao_Paulo", 12),
        new("Sterling", "original/fm35_sterling_20261006_12z.txt", new(2026, 10, 6), 38.98, -77.49, 88, "America/New_York", 12),
        new("Jackson", "original/fm35_jackson_20060922_12z.txt", new(2006, 9, 22), 32.32, -90.08, 91, "America/Chicago", 12),
        new("Norman", "csv/txt_norman_20110522_12z.csv", new(2011, 5, 22), 35.18, -97.44, 345, "America/Chicago", 12),
        new("Idar-Oberstein", "original/bufr_idar_20150712_05z.bufr", new(2015, 7, 12), 49.69, 7.33, 376, "Europe/Berlin", 5),
    ];

    public static CrowdedDay Named(string name) => All.Single(day => day.Name == name);

    /// <summary>With all that crowds a sheet, or with the ascent alone.</summary>
    public MadeBrief Make(bool crowded = true, string? units = null)
    {
        var path = Repository.Shared("soundings", File);
        var inputs = Inputs(crowded, units);
        var brief = BriefDesk.Compute(inputs, SoundingReader.Read(System.IO.File.ReadAllBytes(path), System.IO.Path.GetFileName(path)));
        return new(null, inputs, brief) { Standing = new(null, 0, null) };
    }

    private BriefInputs Inputs(bool crowded, string? units) => new()
    {
        SoundingId = File,
        Site = new SiteJson
        {
            Id = "crowded",
            Name = crowded ? $"Segelfluggelände {Name} am Donauoberschwabenhangwindfeld (erfunden)"[..Math.Min(70, 56 + Name.Length)] : Name,
            Latitude = Latitude,
            Longitude = Longitude,
            ElevationM = ElevationM,
            TimeZone = Zone,
            GroundCover = "crops",
            Units = units ?? "feet-and-knots",
            Runways = [new("08", 80, "grass"), new("26", 260, "grass"), new("17L", 170, "asphalt"), new("35R", 350, "asphalt")],
            TerrainKind = crowded ? "mountains" : null,
            Limits = crowded ? new() { WindKt = 20, GustKt = 25, CrosswindKt = new(8, 10, 14), CeilingM = ElevationM + 1371, CeilingNote = "lower on working days" } : null,
            LaunchMethods = crowded ? ["winch", "aerotow", "self-launch"] : null,
            StandingNotes = crowded ? Long + Long : null,
            EmergencyLine = crowded ? "112, then the tower on 123.500; the first-aid box hangs beside the radio, the defibrillator in the workshop" : null,
        },
        Date = Date,
        PreparedBy = crowded ? "Invented Instructor with a Long Name" : null,
        PreparedAt = new(Date, new TimeOnly(ReportHour, 30), TimeSpan.Zero),
        AscentLatitude = Latitude,
        AscentLongitude = Longitude,
        AscentElevationM = ElevationM,
        Assumptions = new() { CloudOktas = 1, Ensemble = 40 },
        Observation = crowded ? Metar : null,
        Forecast = crowded ? Taf : null,
        DayLimits = crowded ? "No launching before 11:00\nBefore solo: dual only, no crosswind above 8 kt\nAirspace D above the field active from 13:00, ceiling 2,500 ft\nRunway 17L closed" : null,
        InstructorNote = crowded ? Long : null,
        Notes = crowded ? new(Long + "dual only.", Long + "stay within the circuit.", Long + Long + "declare your task.") : null,
    };

    private string Metar => $"METAR ZZZZ {Date.Day:00}{ReportHour:00}20Z 16018G32KT 1200 FG BKN004 FEW025CB 21/20 Q1006 RETS";

    private string Taf =>
        $"TAF ZZZZ {At(ReportHour - 1)}00Z {At(ReportHour)}/{At(ReportHour + 18)} 16016G28KT 3000 BR BKN008 "
        + $"BECMG {At(ReportHour + 2)}/{At(ReportHour + 4)} 20020G34KT 9999 SCT030 "
        + $"PROB40 TEMPO {At(ReportHour + 5)}/{At(ReportHour + 11)} 26028G48KT 1500 +TSRAGR SQ BKN020CB "
        + $"FM{At(ReportHour + 11)}00 31012KT CAVOK";

    private string At(int hour) => $"{Date.AddDays(hour / 24).Day:00}{hour % 24:00}";
}
