using DayBrief.House;

namespace DayBrief.Days;

/// <summary>Over all given mornings and three inputs each nothing jumps or contradicts itself; by definition, 0 allowed.</summary>
public sealed class DayFaultsTests
{
    /// <summary>A trace of cloud, or a morning layer that is broken through, must not lift the usable top by 250 m in five minutes.</summary>
    [Fact]
    public void The_usable_top_never_jumps() => Assert.Equal([], Ids(fault => fault.Jumps > 0));

    [Fact]
    public void None_never_stands_beside_a_median_that_is_one() => Assert.Equal([], Ids(fault => fault.Contradicts));

    /// <summary>Thermals overshoot to about 1.2 depths [Stull1988].</summary>
    [Fact]
    public void Cumulus_is_told_only_within_reach_of_the_thermals() => Assert.Equal([], Ids(fault => fault.CumulusOutOfReach));

    [Fact]
    public void The_screen_temperature_does_not_drop_while_the_ground_heats() => Assert.Equal([], Ids(fault => fault.Drops > 0));

    private static string[] Ids(Func<DayFault, bool> faulty)
    {
        Repository.Shared("cases", "pairs");
        return [.. DayFaults.All.Value.Where(faulty).Select(fault => fault.Id)];
    }
}
