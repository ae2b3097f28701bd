using DayBrief.Logs.Circling;
using DayBrief.Logs.Igc;

namespace DayBrief.Logs;

/// <summary>Flights made with known circles, wind and climb are measured within what real files allow: climb 0.1 m/s, circle 1 s, bank 2°,
/// wind 0.9 m/s a component (repeatability of the method in field use).</summary>
public sealed class FlightFiguresTests
{
    private const double Right = 360.0 / 24;

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(4)]
    public void A_made_climb_is_measured(int intervalS)
    {
        var climb = Assert.Single(Figures(new MadeFlight(intervalS).Fly(120, 0, -1).Fly(24 * 8, Right, 2).Fly(120, 0, -1)).Climbs);
        Assert.True(climb.ToTheRight);
        Assert.Equal(8, climb.Turns, 0.5);
        Assert.Equal(24, climb.PeriodS, 1.0);
        // V = 27 m/s in 24 s: tan φ = V·2π/(T·g) gives 35.8°, r = V·T/2π 103.1 m.
        Assert.Equal(35.8, climb.BankDeg, 2.0);
        Assert.Equal(103.1, climb.RadiusM, 4.0);
        Assert.Equal(27, climb.AirspeedMs, 0.5);
        Assert.Equal(5, climb.Wind.EastwardMs, 0.9);
        Assert.Equal(-2, climb.Wind.NorthwardMs, 0.9);
        Assert.All(climb.TurnList.Skip(1).SkipLast(1), turn => Assert.Equal(2, turn.ClimbMs, 0.1));
        Assert.Equal(2, climb.Best3Ms!.Value, 0.1);
    }

    /// <summary>A circle that moves with the air stays where it is in the air's frame.</summary>
    [Fact]
    public void Drift_with_the_wind_is_no_shift_of_the_centre()
    {
        var climb = Assert.Single(Figures(new MadeFlight(1).Fly(120, 0, -1).Fly(24 * 8, Right, 2).Fly(120, 0, -1)).Climbs);
        Assert.All(climb.TurnList, turn => Assert.InRange(Math.Sqrt((turn.CentreEastM * turn.CentreEastM) + (turn.CentreNorthM * turn.CentreNorthM)), 0, 12));
    }

    [Fact]
    public void Tries_and_reversals_are_told_apart_from_climbs()
    {
        // A try of a turn and a half to the left, ten seconds straight, a climb to the right, a straight, two turns to the right.
        var figures = Figures(new MadeFlight(1).Fly(120, 0, -1).Fly(36, -Right, 0).Fly(10, 0, 0).Fly(24 * 6, Right, 1.5).Fly(100, 0, -1).Fly(48, Right, 0).Fly(100, 0, -1));
        Assert.Single(figures.Climbs);
        Assert.Equal(2, figures.TriesLeft);
        Assert.Equal(1, figures.Reversals);
    }

    [Fact]
    public void A_gap_ends_a_climb()
    {
        var flight = new MadeFlight(1).Fly(120, 0, -1).Fly(24 * 8, Right, 2).Fly(60, 0, -1);
        var lines = System.Text.Encoding.Latin1.GetString(flight.File()).Split("\r\n").ToList();
        lines.RemoveRange(3 + 120 + 90, 20);
        var figures = FlightFigures.Of(IgcReader.Read(System.Text.Encoding.Latin1.GetBytes(string.Join("\r\n", lines))));
        Assert.Equal(2, figures.Climbs.Length + figures.TriesLeft);
    }

    [Fact]
    public void A_climb_with_a_motor_running_is_none()
    {
        var file = System.Text.Encoding.Latin1.GetString(new MadeFlight(1).Fly(60, 0, -1).Fly(24 * 8, Right, 2).File("AXXX\r\nHFDTE120726\r\nI013638ENL\r\n"));
        var noisy = string.Join("\r\n", file.Split("\r\n").Select(line => line.StartsWith('B') ? line + "870" : line));
        var figures = FlightFigures.Of(IgcReader.Read(System.Text.Encoding.Latin1.GetBytes(noisy)));
        Assert.Empty(figures.Climbs);
        Assert.Contains(figures.Remarks, remark => remark.Code == "motor");
    }

    [Fact]
    public void Six_seconds_between_fixes_are_not_scored()
    {
        var figures = Figures(new MadeFlight(6).Fly(120, 0, -1).Fly(24 * 8, Right, 2));
        Assert.Empty(figures.Climbs);
        Assert.Contains(figures.Remarks, remark => remark.Code == "interval");
    }

    /// <summary>Points exactly on a circle give its centre and radius to rounding: the algebraic fit is exact there (Kåsa 1976).</summary>
    [Fact]
    public void The_circle_fit_is_exact_on_a_circle()
    {
        var angles = Enumerable.Range(0, 24).Select(i => i * Math.PI / 12).ToArray();
        var fit = CircleFit.Of([.. angles.Select(angle => 5 + (27 * Math.Sin(angle)))], [.. angles.Select(angle => -2 + (27 * Math.Cos(angle)))])!.Value;
        Assert.Equal(5, fit.EastMs, 9);
        Assert.Equal(-2, fit.NorthMs, 9);
        Assert.Equal(27, fit.AirspeedMs, 9);
        Assert.Equal(0, fit.ResidualMs, 9);
    }

    private static FlightFigures Figures(MadeFlight flight) => FlightFigures.Of(IgcReader.Read(flight.File()));
}
