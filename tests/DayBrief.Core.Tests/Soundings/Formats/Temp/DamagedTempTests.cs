namespace DayBrief.Soundings.Formats.Temp;

public sealed class DamagedTempTests
{
    [Fact]
    public void Bulletin_headings_and_a_repeated_station_are_passed_over()
    {
        var text = "USUS44 KJAN 221223\nMANJAN\n72235 " + DomainMessages.A.Replace("=\nTTBB", "\n\nUMUS44 KJAN 221226\nSGLJAN\n72235 TTBB", StringComparison.Ordinal);
        Assert.Equal(Text.Read(DomainMessages.A).Levels, Text.Read(text).Levels);
    }

    [Fact]
    public void Regional_and_national_sections_are_no_levels()
    {
        var with = DomainMessages.A.Replace("41414 66400=", "41414 66400 51515 11500 12345 61616 70123 10101=", StringComparison.Ordinal);
        Assert.Equal(Text.Read(DomainMessages.A).Levels, Text.Read(with).Levels);
    }

    [Fact]
    public void A_message_cut_after_a_usable_part_is_used_with_a_warning()
    {
        var sounding = Text.Read(DomainMessages.A[..DomainMessages.A.IndexOf("88716", StringComparison.Ordinal)] + "887");
        Assert.Contains(sounding.Remarks, remark => remark is { Code: "truncated", Severity: Severity.Warning } && remark.Message.Contains("887", StringComparison.Ordinal));
        Assert.Contains(sounding.Levels, level => level.Pressure.Hectopascals == 725);
    }

    [Fact]
    public void A_message_cut_before_it_is_usable_is_refused_with_line_and_group()
    {
        var refusal = Text.Refused(DomainMessages.A[..DomainMessages.A.IndexOf("09040", StringComparison.Ordinal)].TrimEnd());
        Assert.Equal(("truncated", 2, "70136"), (refusal.Code, refusal.Line, refusal.Group));
    }

    /// <summary>Cut anywhere: what is left is read with a word about its end, or refused; never read in silence.</summary>
    [Fact]
    public void A_message_cut_anywhere_says_so()
    {
        for (var length = 20; length < DomainMessages.A.Length - 1; length++)
        {
            var text = DomainMessages.A[..length];
            if (text.TrimEnd().EndsWith('=') || text.Length - text.LastIndexOf('\n') <= 5)
            {
                // Whole parts, or less than the name of a part: nothing tells that more should come.
                continue;
            }

            try
            {
                Assert.Contains(Text.Read(text).Remarks, remark => remark.Code is "truncated" or "end-sign-missing" or "part-b-missing");
            }
            catch (InvalidSoundingException refused)
            {
                Assert.Contains(refused.Refusals[0].Code, new[] { "truncated", "too-few-levels", "not-recognised" });
            }
        }
    }

    [Fact]
    public void A_part_A_alone_says_that_part_B_is_missing() =>
        Assert.Contains(Text.Read(DomainMessages.B).Remarks, remark => remark.Code == "part-b-missing");

    [Fact]
    public void Pressure_that_rises_is_refused_with_line_and_group()
    {
        var refusal = Text.Refused(DomainMessages.A.Replace("22889", "22989", StringComparison.Ordinal));
        Assert.Equal(("pressure-not-falling", 5, "22989"), (refusal.Code, refusal.Line, refusal.Group));
    }

    [Fact]
    public void Parts_that_disagree_keep_the_standard_level_and_say_so()
    {
        var sounding = Text.Read(DomainMessages.A.Replace("44500 07191", "44500 08191", StringComparison.Ordinal));
        var level = sounding.Levels.Single(level => level.Pressure.Hectopascals == 500);
        Assert.Equal(-7.1, level.Temperature!.Value.Celsius, tolerance: 1e-9);
        Assert.Contains(sounding.Remarks, remark => remark.Code == "parts-disagree" && remark.Level == level.Pressure);
    }

    [Fact]
    public void A_lost_group_costs_its_level_and_not_those_after_it()
    {
        var sounding = Text.Read(DomainMessages.A.Replace("85503 17218 22044", "85503 22044", StringComparison.Ordinal));
        Assert.Contains(sounding.Remarks, remark => remark.Code == "group-unreadable");
        Assert.Equal(9.0, sounding.Levels.Single(level => level.Pressure.Hectopascals == 700).Temperature!.Value.Celsius, tolerance: 1e-9);
    }

    /// <summary>[WMO306]: above the level that Id names, the wind group is left out. Message B with Id 5.</summary>
    [Fact]
    public void Winds_that_end_below_the_top_are_not_expected_above()
    {
        var text = DomainMessages.B.Replace("56121", "56125", StringComparison.Ordinal)
            .Replace("23374 28048", "23374", StringComparison.Ordinal).Replace("38366 28054", "38366", StringComparison.Ordinal)
            .Replace("46766 27555", "46766", StringComparison.Ordinal).Replace("54564 27558", "54564", StringComparison.Ordinal)
            .Replace("62367 27066", "62367", StringComparison.Ordinal).Replace("67569 28050", "67569", StringComparison.Ordinal);
        var sounding = Text.Read(text);
        var expected = Text.Read(DomainMessages.B).Levels;
        Assert.Equal(expected.Select(level => level.Temperature), sounding.Levels.Select(level => level.Temperature));
        Assert.DoesNotContain(sounding.Levels, level => level.Pressure.Hectopascals is <= 400 and not (105 or 159) && level.Wind is not null);
    }

    /// <summary>Some stations send winds and a header that denies them.</summary>
    [Fact]
    public void Winds_that_the_header_denies_are_read() =>
        Assert.Equal(
            Text.Read(DomainMessages.A).Levels,
            Text.Read(DomainMessages.A.Replace("TTAA 72121", "TTAA 7212/", StringComparison.Ordinal)).Levels);

    [Theory]
    [InlineData("PPBB 72110", 21)]
    [InlineData("PPBB 72060", 0)]
    public void Winds_of_the_same_station_join_within_an_hour(string heading, int winds) =>
        Assert.Equal(winds, Text.Read(DomainMessages.A.Replace("PPBB 72120", heading, StringComparison.Ordinal)).WindsByHeight.Length);

    [Fact]
    public void A_report_of_winds_alone_is_refused() =>
        Assert.Equal("wind-only", Text.Refused(DomainMessages.A[DomainMessages.A.IndexOf("PPBB", StringComparison.Ordinal)..]).Code);

    [Fact]
    public void A_nil_report_is_refused() => Assert.Equal("nil-report", Text.Refused("TTAA 72121 72235 NIL=").Code);

    [Fact]
    public void Two_stations_in_one_text_are_two_ascents()
    {
        var bytes = System.Text.Encoding.UTF8.GetBytes(DomainMessages.A + "\n" + DomainMessages.B);
        Assert.Equal(["72235", "72403"], SoundingReader.ReadAll(bytes).Select(sounding => sounding.Source.Station));
        Assert.Contains(SoundingReader.Read(bytes).Remarks, remark => remark.Code == "several-ascents");
    }
}
