namespace DayBrief.Flight.Terrain;

public sealed class TerrainCautionsTests
{
    [Fact]
    public void Hills_and_mountains_defer_to_the_local_instructor_first_and_forbid_the_turn_towards_the_slope()
    {
        foreach (var kind in new[] { TerrainKind.Hills, TerrainKind.Mountains })
        {
            var codes = TerrainCautions.For(kind).Select(caution => caution.Code).ToArray();
            Assert.Equal("defer-local", codes[0]);
            Assert.Contains("no-turn-to-slope", codes);
            Assert.Contains("height-before-circling", codes);
        }

        Assert.Empty(TerrainCautions.For(TerrainKind.Flat));
    }

    /// <summary>International Standard Atmosphere, √(ρ₀/ρ) at 1000 m is 1.0497 (density 1.1117 of 1.2250 kg/m³): the 5 and 10 % that the text states.</summary>
    [Fact]
    public void The_stated_growth_of_speed_and_radius_is_the_standard_atmospheres()
    {
        var speed = Math.Sqrt(1.2250 / 1.1117);
        Assert.Equal(5, 100 * (speed - 1), tolerance: 0.5);
        Assert.Equal(10, 100 * ((speed * speed) - 1), tolerance: 0.5);
        Assert.Contains(TerrainCautions.For(TerrainKind.Mountains), caution => caution.Text.ToString().Contains("5 % of speed for 1000 m, 10 % of radius"));
    }
}
