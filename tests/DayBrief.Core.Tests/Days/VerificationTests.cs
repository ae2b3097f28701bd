using DayBrief.House;

namespace DayBrief.Days;

public sealed class VerificationTests
{
    private static string Page => Path.Combine(Repository.Root, "docs", "verification.md");

    /// <summary>The page states what the code gives; with DAYBRIEF_WRITE_VERIFICATION=1 the section is written instead.</summary>
    [Fact]
    public void The_page_states_the_figures_that_the_code_gives()
    {
        Repository.Shared("cases", "pairs");
        var page = File.Exists(Page) ? File.ReadAllText(Page) : "# Verification\n\n";
        var start = page.IndexOf(Verification.Heading + "\n", StringComparison.Ordinal);
        var end = start < 0 ? -1 : page.IndexOf("\n## ", start + 4, StringComparison.Ordinal);
        var report = Verification.Report();
        if (Environment.GetEnvironmentVariable("DAYBRIEF_WRITE_VERIFICATION") == "1")
        {
            var before = start < 0 ? page.TrimEnd() + "\n\n" : page[..start];
            var after = end < 0 ? "" : page[end..];
            File.WriteAllText(Page, before + report + after);
            return;
        }

        Assert.True(start >= 0, $"docs/verification.md has no section \"{Verification.Heading}\".");
        Assert.Equal(report, (end < 0 ? page[start..] : page[start..end]).TrimEnd() + "\n");
    }
}
