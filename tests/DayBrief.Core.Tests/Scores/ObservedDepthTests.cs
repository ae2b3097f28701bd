using System.Globalization;
using System.Text;
using DayBrief.House;
using DayBrief.Soundings;

namespace DayBrief.Scores;

public sealed class ObservedDepthTests
{
    /// <summary>Depths of 31 afternoon ascents at Kirov, computed independently from the same levels (layer mean of virtual potential temperature
    /// between 0.2 and 0.8 of the depth, and 0.5 K). The mean here runs from 100 m, so single days may differ by some tens of metres.</summary>
    [Fact]
    public void It_agrees_with_depths_computed_independently()
    {
        var folder = Path.Combine(Repository.Root, "..", "shared", "cases", "pairs");
        Assert.SkipUnless(Directory.Exists(folder), "The published cases do not lie beside the clone.");
        var days = CaseTable.Read(Path.Combine(folder, "kirov.csv"));
        var differences = Enumerable.Range(0, days.Count)
            .Select(day => Depth(Path.Combine(folder, "USKK", days.Text(day, "id") + "_afternoon.csv")) - days.Number(day, "h_obs_layer_plus0p5_m")!.Value)
            .ToArray();
        Assert.Equal(31, differences.Length);
        Assert.InRange(differences.Average(Math.Abs), 0, 30);
        Assert.All(differences, difference => Assert.InRange(difference, -90, 90));
    }

    private static double Depth(string path)
    {
        var rows = CaseTable.Read(path);
        var text = new StringBuilder("pressure_hpa,height_m,temperature_c,dewpoint_c\n");
        for (var row = 0; row < rows.Count; row++)
            text.Append(CultureInfo.InvariantCulture, $"{rows.Text(row, "p_hPa")},{rows.Text(row, "z_agl_m")},{rows.Text(row, "T_C")},{rows.Text(row, "Td_C")}\n");
        return ObservedDepth.Of(SoundingReader.Read(Encoding.UTF8.GetBytes(text.ToString()), "afternoon.csv"))!.Value.Metres;
    }
}
