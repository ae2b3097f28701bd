using System.Text.Json;
using DayBrief.House;
using DayBrief.Units;

namespace DayBrief.Flight.Thermals;

/// <summary>The check case of [Allen2006], section VI: w* 2.56 m/s, depth 1401 m, height 280 m, five updrafts on 1 km².</summary>
public sealed class AllenUpdraftTests
{
    private static readonly Height Depth = Height.FromMetres(1401);

    private static readonly AllenUpdraft CheckCase =
        AllenUpdraft.At(Speed.FromMetresPerSecond(2.56), Depth, Height.FromMetres(280), 5e-6);

    /// <summary>Printed r₂ 79.4 m, to its last digit.</summary>
    [Fact]
    public void Radius_is_the_printed_79_4_m() => Assert.Equal(79.4, CheckCase.RadiusM, tolerance: 0.05);

    /// <summary>Printed: five updrafts; the formula gives 5.395 (computed with the printed program).</summary>
    [Fact]
    public void Number_is_the_printed_five()
    {
        var number = Spacing.UpdraftsIn(1e6, Depth, CheckCase.RadiusM);
        Assert.Equal(5, (int)number);
        Assert.Equal(5.395, number, tolerance: 0.0005);
    }

    /// <summary>Read off the printed figures: about 2.7 and −0.13 m/s, so to half the last digit.</summary>
    [Fact]
    public void Centre_and_surroundings_match_the_printed_figures()
    {
        Assert.Equal(2.7, CheckCase.UpdraftAt(0).MetresPerSecond, tolerance: 0.05);
        Assert.Equal(-0.13, CheckCase.SurroundingSinkMs, tolerance: 0.005);
    }

    /// <summary>Intermediate values of the printed program; half the last digit.</summary>
    [Fact]
    public void Intermediate_values_match_the_program()
    {
        Assert.Equal(0.22731, CheckCase.CoreRatio, tolerance: 5e-6);
        Assert.Equal(1.16769, CheckCase.MeanUpdraftMs, tolerance: 5e-6);
        Assert.Equal(2.73895, CheckCase.CentreUpdraftMs, tolerance: 5e-6);
        Assert.Equal(-0.12826, CheckCase.SurroundingSinkMs, tolerance: 5e-6);
    }

    /// <summary>The program's profile, to the 0.5 % asked for, plus half the last printed digit.</summary>
    [Fact]
    public void Profile_matches_the_program_within_half_a_per_cent()
    {
        foreach (var row in Table("check_profile"))
            Assert.Equal(row[1], CheckCase.UpdraftAt(row[0]).MetresPerSecond, tolerance: (0.005 * Math.Abs(row[1])) + 5e-5);
    }

    /// <summary>The program's values by height; tolerances are half the last printed digit.</summary>
    [Fact]
    public void Values_by_height_match_the_program()
    {
        foreach (var row in Table("vertical_profile"))
        {
            var updraft = AllenUpdraft.At(Speed.FromMetresPerSecond(2.56), Depth, Height.FromMetres(row[0] * 1401), 5e-6);
            Assert.Equal(row[2], updraft.RadiusM, tolerance: 0.0051);
            Assert.Equal(row[4], updraft.MeanUpdraftMs, tolerance: 5.1e-5);
            Assert.Equal(row[5], updraft.CentreUpdraftMs, tolerance: 5.1e-5);
            Assert.Equal(row[6], updraft.SurroundingSinkMs, tolerance: 5.1e-5);
            Assert.Equal(row[7], updraft.RingFactor, tolerance: 5.1e-5);
        }
    }

    /// <summary>Analytic from equation 11: greatest where ⅓ = (4/3)·1.1·x, so at x = 0.22727 with 0.4577·w*.</summary>
    [Fact]
    public void Mean_updraft_is_greatest_at_0_227_of_the_depth() =>
        Assert.Equal(0.4577, AllenUpdraft.MeanUpdraft(1, 0.25 / 1.1), tolerance: 5e-5);

    private static IEnumerable<double[]> Table(string name)
    {
        using var json = JsonDocument.Parse(File.ReadAllText(Repository.Shared("cases", "allen2006.json")));
        return [.. json.RootElement.GetProperty(name).GetProperty("rows").EnumerateArray()
            .Select(row => row.EnumerateArray().Select(cell => cell.GetDouble()).ToArray())];
    }
}
