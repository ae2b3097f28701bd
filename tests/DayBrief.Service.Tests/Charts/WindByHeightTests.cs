using DayBrief.Units;

namespace DayBrief.Service.Charts;

public sealed class WindByHeightTests
{
    private static readonly Figures English = new(HeightUnit.Feet, Languages.Language.English);

    [Theory]
    [InlineData(320)]
    [InlineData(360)]
    public void Every_label_can_be_read(double width)
    {
        Legible.Check(WindByHeight.Draw(InventedWinds.Backing with { Width = width }));
        Legible.Check(WindByHeight.Draw(InventedWinds.Westerly with { Width = width }));
    }

    /// <summary>As everywhere in the brief: direction to five degrees, north is 360.</summary>
    [Theory]
    [InlineData(243, 17.6, "245° 18 kt")]
    [InlineData(2, 5, "360° 5 kt")]
    [InlineData(52, 9.4, "050° 9 kt")]
    [InlineData(90, 0.4, "calm")]
    public void A_wind_is_said_to_five_degrees_and_whole_knots(double from, double knots, string said) =>
        Assert.Equal(said, WindByHeight.Say(Wind.From(from, Speed.FromKnots(knots)), English));

    [Fact]
    public void A_missing_wind_is_not_known() => Assert.Equal("not known", WindByHeight.Say(null, English));

    [Fact]
    public void The_highest_stands_at_the_top_and_the_field_at_the_bottom()
    {
        var heights = WindByHeight.Draw(InventedWinds.Backing).Marks.OfType<TextMark>()
            .Where(mark => mark.At.X == 52).Select(mark => mark.Text);
        Assert.Equal(["10,000", "8,000", "5,000", "3,000", "2,000", "1,000", "field"], heights);
    }
}
