namespace DayBrief.Service.Charts;

public sealed class HatchingTests
{
    private static readonly Point[] Square = [new(10, 10), new(50, 10), new(50, 50), new(10, 50)];

    [Theory]
    [InlineData(0)]
    [InlineData(45)]
    [InlineData(90)]
    [InlineData(120)]
    public void The_lines_times_their_spacing_cover_the_area(double degrees)
    {
        var length = Hatching.Lines(Square, 0.5, degrees)
            .Sum(line => Math.Sqrt(Math.Pow(line.To.X - line.From.X, 2) + Math.Pow(line.To.Y - line.From.Y, 2)));
        Assert.Equal(1600, 0.5 * length, tolerance: 0.02 * 1600);  // 40 × 40; at most one line of 57 too many
    }

    [Fact]
    public void A_hatch_of_45_degrees_rises_to_the_right()
    {
        foreach (var (from, to) in Hatching.Lines(Square, 4, 45))
            Assert.Equal(-1, (to.Y - from.Y) / (to.X - from.X), tolerance: 1e-9);  // y is down
    }

    [Fact]
    public void A_notch_stays_empty()
    {
        Point[] notched = [new(0, 0), new(30, 0), new(30, 30), new(20, 30), new(20, 10), new(10, 10), new(10, 30), new(0, 30)];
        Assert.DoesNotContain(
            Hatching.Lines(notched, 2, 0),
            line => line.From.Y > 10 && line.From.X < 10 && line.To.X > 20);
    }
}
