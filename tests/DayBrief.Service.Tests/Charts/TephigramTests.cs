using DayBrief.Units;

namespace DayBrief.Service.Charts;

public sealed class TephigramTests
{
    private static readonly HeatingStage[] Stages =
    [
        new(Temperature.FromCelsius(17.5), "09:10"),
        new(Temperature.FromCelsius(25), "15:10"),
    ];

    [Fact]
    public void It_says_in_words_what_it_shows()
    {
        var drawing = Tephigram.Draw(new() { Analysis = InventedAscents.SummerMorning, Stages = Stages });
        Assert.Contains("Inversion of 3.8 °C from the ground to 800 ft", drawing.Description, StringComparison.Ordinal);
        Assert.Contains("09:10, 17.5 °C at the surface: dry thermals to", drawing.Description, StringComparison.Ordinal);
        Assert.Contains("15:10, 25 °C at the surface: cloud base", drawing.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void A_missing_dew_point_is_said_and_no_cloud_is_drawn()
    {
        var drawing = Tephigram.Draw(new() { Analysis = InventedAscents.WinterStable });
        Assert.Contains("dew point not known", drawing.Description, StringComparison.Ordinal);
        Assert.DoesNotContain(drawing.Marks.OfType<TextMark>(), mark => mark.Text.Contains("cloud", StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Inputs))]
    public void No_label_is_smaller_than_11_or_leaves_the_drawing_or_covers_another(string ascent, bool metres, double width) =>
        Legible.Check(Tephigram.Draw(new()
        {
            Analysis = ascent switch
            {
                "summer" => InventedAscents.SummerMorning,
                "desert" => InventedAscents.HighDesert,
                _ => InventedAscents.WinterStable,
            },
            Stages = Stages,
            Unit = metres ? HeightUnit.Metres : HeightUnit.Feet,
            Width = width,
        }));

    [Fact]
    public void The_same_input_gives_the_same_bytes() =>
        Assert.Equal(
            SvgWriter.Write(Tephigram.Draw(new() { Analysis = InventedAscents.HighDesert, Stages = Stages }), "t"),
            SvgWriter.Write(Tephigram.Draw(new() { Analysis = InventedAscents.HighDesert, Stages = Stages }), "t"));

    public static TheoryData<string, bool, double> Inputs() =>
        new(from ascent in new[] { "summer", "desert", "winter" }
            from metres in new[] { false, true }
            from width in new[] { 320.0, 360, 520 }
            select (ascent, metres, width));
}
