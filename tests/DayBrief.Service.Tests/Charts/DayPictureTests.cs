namespace DayBrief.Service.Charts;

public sealed class DayPictureTests
{
    private static readonly Dictionary<string, DayPictureInput> Days = new()
    {
        ["cumulus"] = InventedDays.Cumulus,
        ["blue"] = InventedDays.Blue,
        ["none"] = InventedDays.None,
        ["two spells"] = InventedDays.TwoSpells,
        ["empty"] = new() { Moments = [] },
    };

    public static TheoryData<string, double> Cases() =>
        new(from day in Days.Keys from width in new[] { 320.0, 360, 540 } select (day, width));

    [Theory]
    [MemberData(nameof(Cases))]
    public void Every_label_can_be_read(string day, double width) =>
        Legible.Check(DayPicture.Draw(Days[day] with { Width = width }));

    [Fact]
    public void A_day_without_usable_thermals_says_so_in_the_picture_and_in_words()
    {
        var drawing = DayPicture.Draw(InventedDays.None);
        Assert.Contains(drawing.Marks.OfType<TextMark>(), mark => mark.Text == "no usable thermals");
        Assert.Contains("No usable thermals.", drawing.Description, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Now_is_marked_at_its_time_and_every_label_can_still_be_read(string day, double width)
    {
        foreach (var now in new TimeOnly[] { new(8, 35), new(11, 12), new(12, 2), new(16, 15) })
        {
            var drawing = DayPicture.Draw(Days[day] with { Width = width, Now = now });
            Legible.Check(drawing);
            var plot = new DayPicturePlot(Days[day] with { Width = width });
            if (now < plot.From || now > plot.To)
                continue;
            Assert.Contains(drawing.Marks.OfType<TextMark>(), mark => mark.Text == $"now {now:HH:mm}");
            Assert.Contains(drawing.Marks.OfType<PathMark>(), mark => mark.Points.Count == 2 && mark.Points.All(point => Math.Abs(point.X - plot.X(now)) < 1e-9) && mark.Points[0].Y == plot.Frame.Top);
            Assert.Contains($"Now {now:HH:mm}.", drawing.Description, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Now_is_not_marked_before_sunrise_nor_on_a_picture_that_is_kept()
    {
        Assert.DoesNotContain(DayPicture.Draw(InventedDays.None with { Now = new(3, 0) }).Marks.OfType<TextMark>(), mark => mark.Text.StartsWith("now", StringComparison.Ordinal));
        Assert.DoesNotContain(DayPicture.Draw(InventedDays.None).Marks.OfType<TextMark>(), mark => mark.Text.StartsWith("now", StringComparison.Ordinal));
    }

    [Fact]
    public void A_gap_in_the_day_stays_a_gap()
    {
        // The line is the only one of this width; two spells, two lines, none over 14:00 to 15:55.
        var lines = DayPicture.Draw(InventedDays.TwoSpells with { Width = 360 }).Marks.OfType<PathMark>()
            .Where(mark => mark is { Stroke.Width: 2.4, Closed: false }).ToArray();
        Assert.Equal(2, lines.Length);
        Assert.True(lines[0].Points[^1].X < lines[1].Points[0].X);
    }

    [Fact]
    public void Time_runs_evenly_from_sunrise_to_sunset_and_height_from_the_field_up()
    {
        var plot = new DayPicturePlot(InventedDays.None with { Sunrise = new(8, 0), Sunset = new(16, 0) });
        Assert.Equal(plot.Frame.Left, plot.X(new(8, 0)), tolerance: 1e-9);
        Assert.Equal((plot.Frame.Left + plot.Frame.Right) / 2, plot.X(new(12, 0)), tolerance: 1e-9);
        Assert.Equal(plot.Frame.Right, plot.X(new(16, 0)), tolerance: 1e-9);
        Assert.Equal(plot.Frame.Bottom, plot.Y(0), tolerance: 1e-9);
        Assert.Equal(plot.Frame.Top, plot.Y(plot.TopM), tolerance: 1e-9);
    }

    [Fact]
    public void Moments_before_sunrise_or_after_sunset_are_left_out_and_a_late_sun_ends_at_midnight()
    {
        var plot = new DayPicturePlot(InventedDays.Cumulus with { Sunrise = new(12, 0), Sunset = new(0, 20) });
        Assert.All(plot.Input.Moments, m => Assert.True(m.Time >= new TimeOnly(12, 0)));
        Assert.Equal(new TimeOnly(23, 59), plot.To);
        Legible.Check(DayPicture.Draw(plot.Input));
    }

    [Fact]
    public void What_lies_above_the_picture_is_said()
    {
        var texts = DayPicture.Draw(InventedDays.TwoSpells with { Width = 360 }).Marks.OfType<TextMark>().Select(mark => mark.Text).ToArray();
        Assert.Contains("higher up: 0 °C 10,000 ft, cloud tops 20,300 ft", texts);  // 3050 m and 6200 m
    }

    [Fact]
    public void A_simplified_line_keeps_its_ends_and_stays_within_the_tolerance()
    {
        Point[] points = [.. Enumerable.Range(0, 200).Select(i => new Point(i, 40 * Math.Sin(i / 30.0)))];
        var simple = Polylines.Simplify(points, 0.25);
        Assert.True(simple.Count < 60);
        Assert.Equal((points[0], points[^1]), (simple[0], simple[^1]));
        Assert.All(points, p => Assert.True(
            simple.Zip(simple.Skip(1)).Min(piece => Polylines.Distance(p, piece.First, piece.Second)) <= 0.25));
    }
}
