using DayBrief.Service.Languages;

namespace DayBrief.Service.Charts;

/// <summary>A foot is 0.3048 m exactly [SI].</summary>
public sealed class HeightUnitTests
{
    [Theory]
    [InlineData(false, 1280, "4,200 ft")]   // 4,199 ft
    [InlineData(false, 20, "100 ft")]       // 66 ft
    [InlineData(true, 1280, "1,300 m")]
    [InlineData(true, 1270, "1,250 m")]
    public void A_height_is_said_to_the_nearest_hundred_feet_or_fifty_metres(bool inMetres, double metres, string said) =>
        Assert.Equal(said, new Figures(inMetres ? HeightUnit.Metres : HeightUnit.Feet, Language.English).Text(metres));

    /// <summary>DIN 1333 (from memory): point between thousands, decimal comma. 1.2 m/s are 2.3 kt [SI].</summary>
    [Fact]
    public void Figures_are_written_as_the_language_does()
    {
        var german = new Figures(HeightUnit.Feet, Language.German);
        Assert.Equal("4.200 ft", german.Text(1280));
        Assert.Equal("2,3 kt", german.Vertical(1.2));
    }

    [Fact]
    public void An_axis_has_round_steps_from_the_ground()
    {
        var feet = HeightUnit.Feet.Ticks(1900, 6).Select(metres => Math.Round(metres / 0.3048, 6));
        Assert.Equal([0, 2000, 4000, 6000], feet);  // 6,234 ft: seven steps of 1,000 would be more than six
        Assert.Equal([0, 500, 1000, 1500], HeightUnit.Metres.Ticks(1900, 6));
    }
}
