namespace DayBrief.Service.Charts;

public sealed class LabelRoomTests
{
    private static readonly TextStyle Style = new(11);

    private readonly Drawing _drawing = new(200, 100, "", "");

    private LabelRoom Room => field ??= new(_drawing, new(0, 0, 200, 100));

    [Fact]
    public void A_second_label_goes_to_the_next_free_place()
    {
        Assert.True(Room.Place("first", Style, new Point(50, 50)));
        Assert.True(Room.Place("second", Style, new Point(52, 53), new Point(50, 80)));
        Assert.Equal(new(50, 80), Assert.IsType<TextMark>(_drawing.Marks[1]).At);
    }

    [Fact]
    public void A_label_without_a_free_place_is_left_out()
    {
        Room.Keep([new(0, 50), new(200, 50)]);
        Assert.False(Room.Place("across the line", Style, new Point(50, 54)));
        Assert.False(Room.Place("beyond the edge", Style, new Point(180, 20)));
        Assert.Empty(_drawing.Marks);
    }

    [Fact]
    public void A_sloping_label_takes_room_only_along_its_slope()
    {
        Room.Write(new(50, 20), "down to the right", Style with { Rotation = 45 });
        Assert.True(Room.IsFree(new(100, 30), "beside", Style));   // inside its upright bounds, off the slope
        Assert.False(Room.IsFree(new(60, 46), "on it", Style));
    }

    [Fact]
    public void A_label_beside_a_point_stays_inside_the_frame()
    {
        Assert.True(Room.PlaceNear("at the right edge", Style, new Point(196, 50)));
        Assert.All(
            LabelRoom.Boxes(Assert.IsType<TextMark>(_drawing.Marks[0]).At, "at the right edge", Style with { Anchor = Anchor.Middle }),
            box => Assert.True(box.Right <= 200));
    }
}
