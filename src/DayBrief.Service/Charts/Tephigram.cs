namespace DayBrief.Service.Charts;

/// <summary>The ascent on the meteorologist's own sheet, with what the day's heating does to it.</summary>
/// <remarks>[AMS] "tephigram".</remarks>
internal static class Tephigram
{
    public static Drawing Draw(TephigramInput input)
    {
        var plot = TephigramPlot.For(input);
        TephigramGrid.Lines(plot);
        TephigramHeating.Lines(plot);
        TephigramAscent.Lines(plot);
        TephigramHeating.Labels(plot);
        TephigramAscent.Labels(plot);
        TephigramHeating.NameMoisture(plot);
        TephigramGrid.Labels(plot);
        TephigramWinds.Draw(plot);
        return plot.Drawing;
    }
}
