using DayBrief.Soundings.Formats.Temp;

namespace DayBrief.Soundings.Formats.Pasted;

/// <summary>FM 35 as it comes in mails and pages.</summary>
public sealed class PastedTempTests
{
    public static TheoryData<string> Dresses =>
    [
        DomainMessages.A.ToLowerInvariant(),
        string.Join('\n', DomainMessages.A.Split('\n').Select(line => "> " + line)),
        $"<html><body><pre>{DomainMessages.A}</pre></body></html>",
        $"<PRE>{DomainMessages.A}=</PRE>",
        $"Hello,\n\nthe ascent of today:\n\n{DomainMessages.A}\n\nRegards\n",
        $"\"{DomainMessages.A}\"",
    ];

    [Theory]
    [MemberData(nameof(Dresses))]
    public void The_same_ascent_comes_out_of_every_dress(string text)
    {
        var expected = Text.Read(DomainMessages.A);
        var sounding = Text.Read(text);
        Assert.Equal(expected.Levels, sounding.Levels);
        Assert.Equal(expected.Source.Station, sounding.Source.Station);
        Assert.DoesNotContain(sounding.Remarks, remark => remark.Code == "part-a-missing");
    }

    /// <summary>A name inside another word begins no part, and what looks for parts and what parts them agree on it.</summary>
    [Theory]
    [InlineData("-TTAA 72121 72235 99000")]
    [InlineData("xTTAA 72121 72235 99000")]
    [InlineData("#TTAA 72121 72235 99000")]
    public void A_name_inside_a_word_begins_no_part(string text) => Assert.Equal("not-recognised", Text.Refused(text).Code);

    [Fact]
    public void A_missing_part_A_is_told()
    {
        var b = DomainMessages.A[DomainMessages.A.IndexOf("TTBB", StringComparison.Ordinal)..];
        Assert.Contains(Text.Read(b).Remarks, remark => remark.Code == "part-a-missing");
    }
}
