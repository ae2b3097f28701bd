using DayBrief.House;
using DayBrief.Soundings;
using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>Cautions appear with their cause and not without it, on the invented demonstration days (soundings/README.md says
/// what each was made to show) and on small changes of them.</summary>
public sealed class HazardsTests
{
    [Theory]
    [InlineData("thunderstorm-risk.txt", 2026, 7, 18, 29, HazardKind.Thunder)]
    [InlineData("spreading-out.csv", 2026, 8, 12, 21, HazardKind.SpreadOut)]
    [InlineData("strong-wind-streets.json", 2026, 4, 3, 12, HazardKind.WindOverLimit)]
    [InlineData("strong-wind-streets.json", 2026, 4, 3, 12, HazardKind.WindAloft)]
    [InlineData("broad-post-frontal.txt", 2026, 5, 21, 17, HazardKind.Icing)]
    [InlineData("anticyclone-short-dry.csv", 2026, 6, 24, 25, HazardKind.SuddenEnd)]
    public void A_day_made_for_it_gives_the_caution(string file, int year, int month, int day, double maxC, HazardKind kind) =>
        Assert.Contains(Of(file, new(year, month, day), maxC), hazard => hazard.Kind == kind);

    [Fact]
    public void A_quiet_dry_day_gives_none_of_wind_cloud_or_thunder() =>
        Assert.DoesNotContain(
            Of("anticyclone-short-dry.csv", new(2026, 6, 24), 25),
            hazard => hazard.Kind is HazardKind.Thunder or HazardKind.ThunderInStore or HazardKind.Showers or HazardKind.SpreadOut
                or HazardKind.SurfaceWind or HazardKind.WindAloft or HazardKind.Crosswind or HazardKind.LowCloud or HazardKind.Icing);

    [Theory]
    [InlineData(29, false)]
    [InlineData(31, true)]
    public void Heat_is_told_from_thirty_degrees(double maxC, bool told) =>
        Assert.Equal(told, Of("anticyclone-short-dry.csv", new(2026, 6, 24), maxC).Any(hazard => hazard.Kind == HazardKind.Heat));

    /// <summary>The wind of that morning, 250° 15 kt at the ground, lies along runway 25 and across runway 34.</summary>
    [Theory]
    [InlineData(250, false)]
    [InlineData(340, true)]
    public void Crosswind_is_told_only_where_no_runway_lies_into_the_wind(double heading, bool told) =>
        Assert.Equal(
            told,
            Of("strong-wind-streets.json", new(2026, 4, 3), 12, new Runway("test", heading)).Any(hazard => hazard.Kind == HazardKind.Crosswind));

    [Fact]
    public void A_day_without_thermals_gives_no_caution_about_using_them() =>
        Assert.DoesNotContain(
            Of("stratus-no-thermals.csv", new(2026, 10, 20), null),
            hazard => hazard.Kind is HazardKind.SpreadOut or HazardKind.LowTops or HazardKind.SuddenEnd or HazardKind.LastLight);

    [Fact]
    public void The_most_serious_comes_first()
    {
        var hazards = Of("thunderstorm-risk.txt", new(2026, 7, 18), 29);
        Assert.Equal(HazardKind.Thunder, hazards[0].Kind);
    }

    private static IReadOnlyList<Hazard> Of(string file, DateOnly date, double? maxC, params Runway[] runways)
    {
        var sounding = SoundingReader.Read(File.ReadAllBytes(Path.Combine(Repository.Root, "soundings", file)), file);
        return Hazards.Of(Brief.Prepare(new()
        {
            Sounding = sounding.With(sounding.Source with { Elevation = Altitude.FromMetres(118) }),
            Site = new()
            {
                Position = Position.FromDegrees(52.24, -1.41),
                Elevation = Altitude.FromMetres(118),
                TimeZone = TimeZoneInfo.FindSystemTimeZoneById("Europe/London"),
                GroundCover = BoundaryLayer.GroundCover.Crops,
                Runways = [.. runways],
            },
            Date = date,
            Assumptions = new()
            {
                MaxTemperature = maxC is { } celsius ? Temperature.FromCelsius(celsius) : null,
                CloudOktas = maxC is null ? 8 : 0,
                EnsembleSize = 0,
            },
            PreparedAt = new DateTimeOffset(date, new TimeOnly(6, 30), TimeSpan.Zero),
        }));
    }
}
