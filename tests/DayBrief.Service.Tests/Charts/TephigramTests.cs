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
        Assert.Contains("09:10, 18 °C at the surface: dry thermals to", drawing.Description, StringComparison.Ordinal);
        Assert.Contains("15:10, 25 °C at the surface: cloud base", drawing.Description, StringComparison.Ordinal);
    }

    /// <summary>The brief says 19 °C at 09:10; the stirred air above the heated ground is a little cooler, where its adiabat begins.</summary>
    [Fact]
    public void A_stage_is_told_by_the_temperature_that_the_brief_tells()
    {
        var drawing = Tephigram.Draw(new() { Analysis = InventedAscents.SummerMorning, Stages = [new(Temperature.FromCelsius(17.4), "09:10", 18.6), new(Temperature.FromCelsius(25), "15:10", 26.4)] });
        Assert.Contains("09:10, 19 °C at the surface", drawing.Description, StringComparison.Ordinal);
        Assert.Contains("a little cooler", drawing.Description, StringComparison.Ordinal);
        Assert.Contains(drawing.Marks.OfType<TextMark>(), mark => mark.Text == "26 °C");
        Assert.DoesNotContain(drawing.Marks.OfType<TextMark>(), mark => mark.Text == "25 °C");
    }

    /// <summary>Heights are above the field, wherever the balloon went up: the field lies 1,000 ft above it.</summary>
    [Fact]
    public void Heights_are_above_the_field()
    {
        var input = new TephigramInput { Analysis = InventedAscents.SummerMorning, Stages = Stages };
        var lower = Tephigram.Draw(input with { FieldAboveAscentM = 304.8 });
        Assert.Contains("Inversion of 3.8 °C from the ground to 800 ft", Tephigram.Draw(input).Description, StringComparison.Ordinal);
        Assert.Contains("Inversion of 3.8 °C from the ground to −200 ft", lower.Description, StringComparison.Ordinal);
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
