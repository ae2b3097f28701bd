namespace DayBrief.Service.Charts;

/// <summary>ISO/IEC 18004 (from memory): 17 + 4 × version modules a side, a quiet zone of 4 modules, three finder
/// patterns of 7 × 7 modules, dark ring, light ring, dark 3 × 3 core.</summary>
public sealed class QrCodeTests
{
    private const double Module = 3;

    private static readonly Drawing Code = QrCode.Draw("https://field.example/briefs/2026-06-21", Module);

    [Fact]
    public void The_side_is_a_whole_number_of_modules_with_a_quiet_zone()
    {
        var modules = (Code.Width / Module) - 8;
        Assert.Equal(0, (modules - 17) % 4);
        Assert.Equal(Code.Width, Code.Height);
        var dark = Dark().ToArray();
        Assert.Equal(4 * Module, dark.Min(p => p.X));
        Assert.Equal(4 * Module, dark.Min(p => p.Y));
        Assert.Equal(Code.Width - (4 * Module), dark.Max(p => p.X));
    }

    [Fact]
    public void Three_corners_hold_finder_patterns()
    {
        var last = (int)(Code.Width / Module) - 4 - 7;
        foreach (var (x, y) in new[] { (4, 4), (last, 4), (4, last) })
        {
            for (var i = 0; i < 7; i++)
            {
                for (var k = 0; k < 7; k++)
                {
                    var ring = Math.Max(Math.Abs(i - 3), Math.Abs(k - 3));
                    Assert.Equal(ring != 2, IsDark(x + i, y + k));
                }
            }
        }
    }

    private static IEnumerable<Point> Dark() => Code.Marks.OfType<PathMark>()
        .Where(mark => mark.Fill == Ink.Black).SelectMany(mark => mark.Points);

    private static bool IsDark(int column, int row)
    {
        var (x, y) = ((column + 0.5) * Module, (row + 0.5) * Module);
        return Code.Marks.OfType<PathMark>().Any(mark => mark.Fill == Ink.Black
            && mark.Points[0].X < x && mark.Points[2].X > x && mark.Points[0].Y < y && mark.Points[2].Y > y);
    }
}
