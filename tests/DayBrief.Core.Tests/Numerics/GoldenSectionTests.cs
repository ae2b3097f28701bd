namespace DayBrief.Numerics;

public sealed class GoldenSectionTests
{
    /// <summary>Analytic tops; the tolerance is the one asked for.</summary>
    [Fact]
    public void Argmax_finds_the_top_of_known_functions()
    {
        Assert.Equal(Math.PI / 2, GoldenSection.Argmax(Math.Sin, 0, 3, 1e-6), tolerance: 1e-6);
        Assert.Equal(1 / Math.E, GoldenSection.Argmax(x => -x * Math.Log(x), 0.01, 1, 1e-6), tolerance: 1e-6);
    }

    [Fact]
    public void Argmax_gives_the_end_when_the_function_only_rises() =>
        Assert.Equal(7, GoldenSection.Argmax(x => x, 2, 7, 1e-6));
}
