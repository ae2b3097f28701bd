using System.Text.Json;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Briefs;

/// <summary>Assumptions by hour are read in order of time, and each wrong element is named.</summary>
public sealed class AssumptionsJsonTests
{
    [Fact]
    public void Hours_are_sorted_and_hold_until_the_next()
    {
        var assumptions = Read("""{"windByHour":[{"from":"14:00","directionDeg":270,"speedKt":12,"gustKt":20},{"from":"9:00","directionDeg":200,"speedKt":5}],"cloudByHour":[{"from":"12:00","oktas":4},{"from":"08:30","oktas":1}],"qnhHpa":1021}""").ToAssumptions();
        Assert.Equal(1021, assumptions.Qnh!.Value.Hectopascals, tolerance: 1e-9);
        Assert.Equal(200, assumptions.WindAt(new(6, 0))!.Value.Wind.FromDegrees);
        Assert.Equal(200, assumptions.WindAt(new(13, 59))!.Value.Wind.FromDegrees);
        Assert.Equal(20, assumptions.WindAt(new(14, 0))!.Value.Gust!.Value.Knots, tolerance: 1e-9);
        Assert.Equal(1, assumptions.CloudAt(new(11, 59)));
        Assert.Equal(4, assumptions.CloudAt(new(12, 0)));
    }

    [Theory]
    [InlineData("""{"windByHour":[{"from":"09:00","directionDeg":1,"speedKt":1},{"from":"10:00","directionDeg":1,"speedKt":1},{"from":"11:00","directionDeg":1,"speedKt":-3}]}""", "assumptions.windByHour[2].speedKt")]
    [InlineData("""{"windByHour":[{"from":"09:00","directionDeg":361,"speedKt":1}]}""", "assumptions.windByHour[0].directionDeg")]
    [InlineData("""{"windByHour":[{"from":"09:00","directionDeg":1,"speedKt":20,"gustKt":15}]}""", "assumptions.windByHour[0].gustKt")]
    [InlineData("""{"windByHour":[{"from":"25:00","directionDeg":1,"speedKt":20}]}""", "assumptions.windByHour[0].from")]
    [InlineData("""{"windByHour":[null]}""", "assumptions.windByHour[0]")]
    [InlineData("""{"cloudByHour":[{"from":"09:00","oktas":1},{"from":"09:00","oktas":2}]}""", "assumptions.cloudByHour[1].from")]
    [InlineData("""{"cloudByHour":[{"from":"09:00","oktas":9}]}""", "assumptions.cloudByHour[0].oktas")]
    [InlineData("""{"qnhHpa":101.3}""", "assumptions.qnhHpa")]
    public void Each_wrong_element_is_named(string json, string field)
    {
        var refused = Assert.Throws<InvalidInputException>(Read(json).ToAssumptions);
        Assert.Equal(field, Assert.Single(refused.Errors).Field);
    }

    private static AssumptionsJson Read(string json) => JsonSerializer.Deserialize<AssumptionsJson>(json, Json.Line)!;
}
