using DayBrief.Soundings.Formats;
using DayBrief.Units;

namespace DayBrief.Soundings.Quality;

public sealed class BalloonDriftTests
{
    private static readonly Position Launch = Position.FromDegrees(48, 9);

    /// <summary>One degree of latitude is 111.195 km on the mean radius [IUGG]: 0.2° are 22 km, 0.04° are 4 km.</summary>
    [Theory]
    [InlineData(0.2, "At 520 hPa the balloon was 22 km from the launch site.")]
    [InlineData(0.04, null)]
    public void Drift_is_told_from_five_kilometres(double degreesNorth, string? expected)
    {
        var remarks = new RemarkList();
        BalloonDrift.Check([Level(950, 0), Level(520, degreesNorth), Level(300, 1)], Launch, remarks);
        Assert.Equal(expected, remarks.All().SingleOrDefault()?.Message);
    }

    [Fact]
    public void Nothing_is_said_without_positions()
    {
        var remarks = new RemarkList();
        BalloonDrift.Check([new ReadLevel(default) { PressureHpa = 600 }], Launch, remarks);
        Assert.Empty(remarks.All());
    }

    private static ReadLevel Level(double hpa, double degreesNorth) =>
        new(default) { PressureHpa = hpa, Position = Position.FromDegrees(48 + degreesNorth, 9) };
}
