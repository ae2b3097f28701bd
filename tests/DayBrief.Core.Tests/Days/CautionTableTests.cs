using DayBrief.House;

namespace DayBrief.Days;

/// <summary>One table has every kind of caution, and docs/cautions.md shows readers the same.</summary>
public sealed class CautionTableTests
{
    private static readonly string[] Documented = File.ReadAllLines(Path.Combine(Repository.Root, "docs", "cautions.md"));

    public static TheoryData<HazardKind> Kinds => [.. Enum.GetValues<HazardKind>()];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_kind_has_cause_rank_words_and_source_and_the_page_says_them(HazardKind kind)
    {
        var entry = CautionTable.All[kind];
        Assert.InRange(entry.Risk.Product, 1, 16);
        Assert.NotEmpty(entry.Cause);
        var row = Assert.Single(Documented, line => line.Contains($"(`{entry.Words}`)", StringComparison.Ordinal));
        Assert.Contains($"| {entry.Cause} |", row, StringComparison.Ordinal);
        Assert.Contains($"| {entry.Source} |", row, StringComparison.Ordinal);
        var rank = $"{entry.Risk.Harm}, {entry.Risk.Chance}{(entry.EndsFlying ? "; ends flying" : "")}";
        Assert.EndsWith($"| {rank} |", row, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void No_two_kinds_share_their_words() =>
        Assert.Equal(CautionTable.All.Count, CautionTable.All.Values.Select(entry => entry.Words).Distinct().Count());
}
