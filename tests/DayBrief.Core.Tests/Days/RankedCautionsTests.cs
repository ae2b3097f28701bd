namespace DayBrief.Days;

/// <summary>The worst comes first, and none that is serious is lost among what follows.</summary>
public sealed class RankedCautionsTests
{
    [Fact]
    public void Sunburn_comes_after_thunder_and_is_minor()
    {
        var ranked = RankedCautions.Of([new(HazardKind.Ultraviolet, 7), new(HazardKind.Cold, 2), new(HazardKind.Heat, 31), new(HazardKind.Thunder)]);
        Assert.Equal([HazardKind.Thunder, HazardKind.Heat], ranked.All.Take(2).Select(caution => caution.Kind));
        Assert.True(ranked.All[0].IsSerious);
        Assert.All(ranked.All.Skip(2), caution => Assert.True(caution.IsMinor));
    }

    [Fact]
    public void A_fourth_serious_one_is_named_with_the_worst()
    {
        var ranked = RankedCautions.Of([new(HazardKind.Thunder), new(HazardKind.WindOverLimit, 12), new(HazardKind.GustOverLimit, 15), new(HazardKind.WindAloft, 15), new(HazardKind.Heat, 31)]);
        Assert.Equal(3, ranked.Worst.Count());
        Assert.Equal([HazardKind.WindAloft], ranked.SeriousRest.Select(caution => caution.Kind));
        Assert.Equal(2, ranked.Rest.Count());
    }

    [Fact]
    public void Several_of_a_kind_are_one_caution_that_the_worst_leads()
    {
        var mild = new Hazard(HazardKind.Crosswind, 5) { About = "06/24" };
        var worse = new Hazard(HazardKind.Crosswind, 8) { About = "16/34", Risk = new(Harm.Accident, Chance.Stated) };
        var caution = Assert.Single(RankedCautions.Of([mild, worse]).All);
        Assert.Equal([worse, mild], caution.Hazards);
        Assert.True(caution.IsSerious);
    }

    /// <summary>"Thunderstorms" stood eighth, after crosswind, where a forecast gave them 40 %. Its squalls and hail follow the other
    /// serious ones, so that the first three lines are not one storm.</summary>
    [Fact]
    public void Thunder_stands_first_even_where_it_is_only_probable()
    {
        var probable = new Risk(Harm.Death, Chance.Possible);
        var all = RankedCautions.Of(
        [
            new(HazardKind.Crosswind, 12) { EndsFlying = true, Risk = new(Harm.Accident, Chance.Likely) },
            new(HazardKind.GustOverLimit, 24),
            new(HazardKind.Hail) { Risk = new(Harm.Death, Chance.Likely) },
            new(HazardKind.Squall) { Risk = probable },
            new(HazardKind.Thunder) { Risk = probable },
        ]).All;
        Assert.Equal([HazardKind.Thunder, HazardKind.GustOverLimit, HazardKind.Crosswind, HazardKind.Hail, HazardKind.Squall], all.Select(caution => caution.Kind));
    }

    /// <summary>Whatever the day: what is serious first, and within that by harm times chance.</summary>
    [Fact]
    public void All_kinds_stand_in_order_of_harm_times_chance()
    {
        var all = RankedCautions.Of(Enum.GetValues<HazardKind>().Select(kind => new Hazard(kind))).All;
        Assert.Equal(Enum.GetValues<HazardKind>().Length, all.Length);
        foreach (var part in new[] { all.TakeWhile(caution => caution.IsSerious), all.SkipWhile(caution => caution.IsSerious) })
        {
            // Cloud, squalls and hail of the thunder that is told come last of the serious ones.
            var products = part.Where(caution => !caution.IsSerious || caution.Kind is not (HazardKind.Cumulonimbus or HazardKind.Squall or HazardKind.Hail)).Select(caution => caution.Risk.Product).ToArray();
            Assert.Equal(products.OrderDescending(), products);
        }

        Assert.DoesNotContain(all.SkipWhile(caution => caution.IsSerious), caution => caution.IsSerious);
    }
}
