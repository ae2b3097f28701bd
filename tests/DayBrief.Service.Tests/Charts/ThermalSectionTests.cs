namespace DayBrief.Service.Charts;

public sealed class ThermalSectionTests
{
    private static readonly Dictionary<string, ThermalSectionInput> Sections = new()
    {
        ["leaning"] = InventedThermals.Leaning,
        ["upright"] = InventedThermals.Upright,
        ["sheared"] = InventedThermals.Sheared,
    };

    public static TheoryData<string, double> Cases() =>
        new(from section in Sections.Keys from width in new[] { 320.0, 360, 500 } select (section, width));

    [Theory]
    [MemberData(nameof(Cases))]
    public void Every_label_can_be_read(string section, double width) =>
        Legible.Check(ThermalSection.Draw(Sections[section] with { Width = width }));

    [Theory]
    [MemberData(nameof(Cases))]
    public void The_thermal_stays_inside_the_frame(string section, double width)
    {
        var plot = new ThermalSectionPlot(Sections[section] with { Width = width });
        Assert.All(plot.Slices, slice => Assert.True(plot.Frame.Holds(plot.Edge(slice, -1)) && plot.Frame.Holds(plot.Edge(slice, 1))));
    }

    [Fact]
    public void The_stated_exaggeration_is_the_drawn_one()
    {
        var leaning = InventedThermals.Leaning with { Width = 360 };
        var plot = new ThermalSectionPlot(leaning);
        var (wide, high) = (plot.X(100) - plot.X(0), plot.Y(0) - plot.Y(100));
        Assert.Equal(plot.Exaggeration, wide / high, tolerance: 1e-9);
        Assert.Contains(
            ThermalSection.Draw(leaning).Marks.OfType<TextMark>(),
            mark => mark.Text == string.Create(System.Globalization.CultureInfo.InvariantCulture, $"widths drawn × {plot.Exaggeration:0.#}"));
    }

    [Fact]
    public void Between_two_slices_the_thermal_is_interpolated()
    {
        var plot = new ThermalSectionPlot(InventedThermals.Leaning);
        var slice = plot.At(475);  // half way between 350 m and 600 m
        Assert.Equal((98 + 113) / 2.0, slice.RadiusM, tolerance: 1e-9);
        Assert.Equal((75 + 120) / 2.0, slice.AxisM, tolerance: 1e-9);
    }

    [Fact]
    public void A_lean_against_the_wind_is_called_upwind() =>
        Assert.Contains("leans upwind", ThermalSection.Draw(InventedThermals.Sheared).Description, StringComparison.Ordinal);
}
