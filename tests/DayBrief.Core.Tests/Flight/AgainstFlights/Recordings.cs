using System.Globalization;

namespace DayBrief.Flight.AgainstFlights;

/// <summary>Reads the climbs of flight recordings: turns.csv of a folder such as ../shared/field.</summary>
internal static class Recordings
{
    public static IReadOnlyList<ClimbRow> Read(string folder)
    {
        var lines = File.ReadAllLines(Path.Combine(folder, "turns.csv"));
        var columns = lines[0].Split(',');
        int Column(string name) => Array.IndexOf(columns, name);
        var (climb, turn) = (Column("climb"), Column("turn"));
        string[] names = ["climb_energy_m_s", "period_s", "swing_amplitude_m_s", "centre_x_m", "centre_y_m", "radius_m"];
        var wanted = names.Select(Column).ToArray();
        return [.. lines.Skip(1).Select(line => line.Split(','))
            .GroupBy(cells => cells[climb])
            .Select(rows => rows.OrderBy(cells => int.Parse(cells[turn], CultureInfo.InvariantCulture))
                .Select(cells => wanted.Select(column => double.Parse(cells[column], CultureInfo.InvariantCulture)).ToArray()).ToArray())
            .Select(Climb)];
    }

    private static ClimbRow Climb(double[][] turns) => new(
        [.. turns.Select(turn => turn[0])],
        [.. turns.Select(turn => turn[1])],
        [.. turns.Select(turn => turn[2])],
        [.. Enumerable.Range(1, turns.Length - 1).Select(i => Shift(turns[i - 1], turns[i]))]);

    private static double Shift(double[] from, double[] to) =>
        Math.Sqrt(Math.Pow(to[3] - from[3], 2) + Math.Pow(to[4] - from[4], 2)) / (0.5 * (from[5] + to[5]));
}
