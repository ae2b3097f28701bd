using DayBrief.House;

namespace DayBrief.Flight.AgainstFlights;

/// <summary>The simulation against climbs from flight recorders: ../shared/field, or the folder that DAYBRIEF_FIELD names.</summary>
public sealed class AgainstFlightsTests
{
    private static string Page => Path.Combine(Repository.Root, "docs", "verification.md");

    private static string? Other => Environment.GetEnvironmentVariable("DAYBRIEF_FIELD");

    private static Comparison Compared =>
        new(Recordings.Read(Other ?? Path.GetDirectoryName(Repository.Shared("field", "turns.csv"))!), SimulatedClimbs.Mix);

    /// <summary>Met as the issue defines it: simulated medians within the flown quartiles.</summary>
    [Fact]
    public void Simulated_medians_lie_within_the_flown_quartiles() =>
        Assert.All(Compared.Judged(), row => Assert.True(row.Recorded.Holds(row.Simulated), $"{row.What}: flown {row.Recorded}, simulated {row.Simulated}"));

    /// <summary>The ranges of ../shared/field/README.md (95 %).</summary>
    [Fact]
    public void Slopes_lie_within_the_recorded_ranges() =>
        Assert.All(Comparison.Slopes(), slope => Assert.True(slope.Simulated >= slope.From && slope.Simulated <= slope.To, $"{slope}"));

    /// <summary>The figures that the folder's README states must come out of its own file, or the two are not compared by one definition.</summary>
    [Fact]
    public void The_recordings_are_read_as_their_README_defines()
    {
        Repository.Shared("field", "turns.csv");
        Assert.SkipWhen(Other is not null, "DAYBRIEF_FIELD names another half.");
        var flown = Compared.Judged().ToDictionary(row => row.What, row => row.Recorded);
        Assert.Equal([0.82, 0.91, 0.91, 0.90, 0.85, 0.79], Enumerable.Range(1, 6).Select(turn => Math.Round(flown[$"turn {turn} over best three"].Median, 2)));
        Assert.Equal(2, flown["first turn within a tenth of the best three"].Median);
        Assert.Equal(0.83, flown["first three minutes over best three"].Median, tolerance: 0.02);
    }

    /// <summary>The page states what the code gives; with DAYBRIEF_WRITE_VERIFICATION=1 the section is written instead.</summary>
    [Fact]
    public void The_page_states_the_figures_that_the_code_gives()
    {
        Repository.Shared("field", "turns.csv");
        var report = Compared.Report();
        if (Other is not null)
        {
            TestContext.Current.TestOutputHelper?.WriteLine(report);
            return;
        }

        var page = File.ReadAllText(Page);
        var start = page.IndexOf(Comparison.Heading + "\n", StringComparison.Ordinal);
        var end = start < 0 ? -1 : page.IndexOf("\n## ", start + 4, StringComparison.Ordinal);
        if (Environment.GetEnvironmentVariable("DAYBRIEF_WRITE_VERIFICATION") == "1")
        {
            File.WriteAllText(Page, start < 0 ? page.TrimEnd() + "\n\n" + report : page[..start] + report + (end < 0 ? "" : page[end..]));
            return;
        }

        Assert.True(start >= 0, $"docs/verification.md has no section \"{Comparison.Heading}\".");
        Assert.Equal(report, (end < 0 ? page[start..] : page[start..end]).TrimEnd() + "\n");
    }
}
