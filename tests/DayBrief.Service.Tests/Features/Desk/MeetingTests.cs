using DayBrief.Service.Features.Briefs;

namespace DayBrief.Service.Features.Desk;

/// <summary>Two editors of one draft, field by field: the usual three-way merge (as diff3 does by lines).</summary>
public sealed class MeetingTests
{
    [Theory]
    [InlineData("20", "20", "20", "20", false)] // nobody changed it
    [InlineData("20", "22", "20", "22", false)] // only the other
    [InlineData("20", "20", "24", "24", false)] // only this one
    [InlineData("20", "22", "22", "22", false)] // both to the same
    [InlineData("20", "22", "24", "24", true)] // both, to different things
    [InlineData("", "22", "24", "24", true)]
    [InlineData("20", "", "20", "", false)] // the other emptied it
    public void A_field_is_whose_it_was_changed_by(string seen, string theirs, string mine, string merged, bool clashes)
    {
        var meeting = Of(seen, theirs, mine, over: false);
        Assert.Equal(clashes, meeting.Clashes.Count > 0);
        Assert.Equal(merged, meeting.Merged["maxTemperatureC"]);
    }

    [Fact]
    public void Who_knows_of_the_clash_may_have_it_his_way_and_still_gets_the_others_other_changes()
    {
        var meeting = Meeting.Of(
            Fields(("maxTemperatureC", "20"), ("cloudOktas", "1")),
            Fields(("maxTemperatureC", "22"), ("cloudOktas", "3")),
            Fields(("maxTemperatureC", "24"), ("cloudOktas", "1")),
            Other,
            over: true);
        Assert.Empty(meeting.Clashes);
        Assert.Equal(["cloudOktas"], meeting.Taken);
        Assert.Equal(("24", "3"), (meeting.Merged["maxTemperatureC"], meeting.Merged["cloudOktas"]));
    }

    private static Draft Other => new() { Id = "x", SiteId = "harrowmere", Date = new(2026, 5, 21), EditedAt = DateTimeOffset.UnixEpoch };

    private static Meeting Of(string seen, string theirs, string mine, bool over) =>
        Meeting.Of(Fields(("maxTemperatureC", seen)), Fields(("maxTemperatureC", theirs)), Fields(("maxTemperatureC", mine)), Other, over);

    private static DeskFields Fields(params (string Name, string Value)[] fields) =>
        new(fields.ToDictionary(field => field.Name, field => field.Value));
}
