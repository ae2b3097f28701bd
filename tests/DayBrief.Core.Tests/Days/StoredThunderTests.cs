using DayBrief.House;
using DayBrief.Soundings;
using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>Thunder in store is told by the energy of the air, and its cause by its right name.</summary>
public sealed class StoredThunderTests
{
    private static readonly HazardCase Quiet = new();

    /// <summary>Seen: CAPE 1,824 printed as "K index 16".</summary>
    [Fact]
    public void Energy_that_is_the_cause_is_its_figure_and_no_K_index_stands_beside_it()
    {
        var hazard = (Quiet with { CapeJkg = 1824, KIndex = 16 }).Hazards().Single(hazard => hazard.Kind == HazardKind.ThunderInStore);
        Assert.Equal((1824, (double?)null), (hazard.Value, hazard.Beside));
    }

    [Theory]
    [InlineData(600, Chance.Seldom)]
    [InlineData(1200, Chance.Possible)]
    [InlineData(3000, Chance.Likely)]
    public void More_energy_is_likelier(double cape, Chance chance) =>
        Assert.Equal(chance, CautionTable.RiskOf((Quiet with { CapeJkg = cape }).Hazards().Single(hazard => hazard.Kind == HazardKind.ThunderInStore)).Chance);

    /// <summary>A probable storm in air full of energy is a likely one.</summary>
    [Fact]
    public void A_probable_storm_is_as_likely_as_the_energy_makes_it()
    {
        var day = Quiet with { Taf = "TAF XXXX 200500Z 2006/2018 24005KT 9999 SCT040 PROB30 2012/2016 TSRA" };
        Chance Of(HazardCase of) => CautionTable.RiskOf(of.Hazards().Single(hazard => hazard.Kind == HazardKind.Thunder)).Chance;
        Assert.Equal(Chance.Possible, Of(day));
        Assert.Equal(Chance.Likely, Of(day with { CapeJkg = 3000 }));
    }

    /// <summary>Boise on 9 December 2010, 12 UTC, open data (shared/soundings/index.json): a valley inversion without energy.</summary>
    [Fact]
    public void A_December_valley_without_energy_stores_no_thunder()
    {
        var file = Repository.Shared("soundings", "csv", "txt_boise_20101209_12z.csv");
        var hazards = Hazards.Of(Brief.Prepare(new()
        {
            Sounding = SoundingReader.Read(File.ReadAllBytes(file), "boise.csv"),
            Site = new()
            {
                Position = Position.FromDegrees(43.56, -116.21),
                Elevation = Altitude.FromMetres(874),
                TimeZone = TimeZoneInfo.FindSystemTimeZoneById("America/Boise"),
            },
            Date = new(2010, 12, 9),
            Assumptions = new() { EnsembleSize = 0 },
            PreparedAt = default,
        }));
        Assert.DoesNotContain(hazards, hazard => hazard.Kind is HazardKind.ThunderInStore or HazardKind.Thunder);
    }
}
