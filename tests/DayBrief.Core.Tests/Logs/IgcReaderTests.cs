using System.Text;
using DayBrief.Logs.Igc;

namespace DayBrief.Logs;

public sealed class IgcReaderTests
{
    /// <summary>A public example whose values an open reader asserts: 11:01:35, 52.1057167, −0.1033000, valid, 587 m, 558 m.</summary>
    [Fact]
    public void The_public_example_of_a_fix_is_read()
    {
        var fix = Assert.Single(Read("AXXX\nHFDTE010203\nB1101355206343N00006198WA0058700558\n").Fixes);
        Assert.Equal((11 * 3600) + 60 + 35, fix.Seconds);
        Assert.Equal(52.1057167, fix.LatitudeDegrees, 7);
        Assert.Equal(-0.1033000, fix.LongitudeDegrees, 7);
        Assert.Equal((587, 558, true), (fix.PressureHeightM, fix.GnssHeightM, fix.Is3D));
    }

    /// <summary>FAI IGC standard: the date header stands with and without DATE: and the flight's number.</summary>
    [Theory]
    [InlineData("HFDTE120726")]
    [InlineData("HFDTEDATE:120726,01")]
    [InlineData("HFDTEDATE:120726")]
    [InlineData("HFDTEDATE: 120726,1")]
    [InlineData("HPDTE120726")]
    public void The_date_is_read_in_every_form(string header) =>
        Assert.Equal(new DateOnly(2026, 7, 12), Read($"AXXX\n{header}\n{Fix("120000")}").Date);

    [Fact]
    public void Without_a_date_the_day_is_not_known_and_it_is_said()
    {
        var log = Read($"AXXX\n{Fix("120000")}");
        Assert.Null(log.Date);
        Assert.Null(log.At(log.Fixes[0].Seconds));
        Assert.Contains(log.Remarks, remark => remark.Code == "no-date");
    }

    /// <summary>UTC runs on over midnight: a fall by more than half a day is the next day.</summary>
    [Fact]
    public void Midnight_adds_a_day()
    {
        var log = Read($"AXXX\nHFDTE120726\n{Fix("235959")}{Fix("000001")}");
        Assert.Equal([86_399, 86_401], log.Fixes.Select(fix => fix.Seconds));
        Assert.Equal(new DateTimeOffset(2026, 7, 13, 0, 0, 1, TimeSpan.Zero), log.At(log.Fixes[1].Seconds));
    }

    /// <summary>Midnight and a date record for the same midnight are one day, not two.</summary>
    [Fact]
    public void A_second_date_after_midnight_adds_no_second_day()
    {
        var log = Read($"AXXX\nHFDTE120726\n{Fix("235959")}HFDTE130726\n{Fix("000001")}{Fix("000002")}");
        Assert.Equal([86_399, 86_401, 86_402], log.Fixes.Select(fix => fix.Seconds));
        Assert.Equal(new DateOnly(2026, 7, 12), log.Date);
        Assert.Contains(log.Remarks, remark => remark.Code == "dates");
    }

    [Fact]
    public void Times_that_repeat_or_go_back_are_counted_and_left_out()
    {
        var log = Read($"AXXX\nHFDTE120726\n{Fix("120000")}{Fix("120000")}{Fix("120004")}{Fix("120003")}{Fix("120005")}");
        Assert.Equal(5, log.Records);
        Assert.Equal([43_200, 43_204, 43_205], log.Fixes.Select(fix => fix.Seconds));
        Assert.Equal(1, log.Remarks.Single(remark => remark.Code == "time-again").Count);
        Assert.Equal(1, log.Remarks.Single(remark => remark.Code == "time-back").Count);
    }

    [Theory]
    [InlineData("B1201015206343N00006198WX0058700558")]
    [InlineData("B1201015266343N00006198WA0058700558")]
    [InlineData("B1201019906343N00006198WA0058700558")]
    [InlineData("B1201615206343N00006198WA0058700558")]
    [InlineData("B1201015206343N00006198WA00587")]
    [InlineData("B12010152063x3N00006198WA0058700558")]
    public void A_malformed_fix_is_counted_and_left_out(string line)
    {
        var log = Read($"AXXX\nHFDTE120726\n{Fix("120000")}{line}\n{Fix("120200")}");
        Assert.Equal(2, log.Records);
        Assert.Equal(1, log.Remarks.Single(remark => remark.Code == "malformed").Count);
    }

    /// <summary>Heights below the datum carry a minus sign in the first of five places.</summary>
    [Fact]
    public void Negative_heights_are_read()
    {
        var fix = Assert.Single(Read("AXXX\nHFDTE120726\nB1101355206343N00006198WA-001200-03\nB1101355206343N00006198WA-0012-0003\n").Fixes);
        Assert.Equal((-12, -3), (fix.PressureHeightM, fix.GnssHeightM));
    }

    /// <summary>FAI IGC standard: LAD and LOD are the further decimals of the minutes; columns come from the I record alone.</summary>
    [Fact]
    public void Further_places_of_the_minutes_come_from_the_columns_of_the_I_record()
    {
        var fix = Assert.Single(Read("AXXX\nHFDTE120726\nI033637LAD3839LOD4042ENL\nB1101355206343N00006198WA00587005584567900\n").Fixes);
        Assert.Equal(52 + (6.34345 / 60), fix.LatitudeDegrees, 9);
        Assert.Equal(-(0.06198 + 6.19800 - 0.06198 + 0.00067) / 60, fix.LongitudeDegrees, 9);
        Assert.True(fix.MotorRuns);
    }

    [Fact]
    public void Line_ends_blank_lines_and_a_closing_control_z_do_not_matter()
    {
        var flight = new MadeFlight(1).Fly(60, 0, 1);
        var unix = IgcReader.Read(flight.File(lineEnd: "\n"));
        Assert.Equal(flight.Fixes, unix.Records);
        Assert.Equal(unix.Fixes, IgcReader.Read(flight.File()).Fixes);
        Assert.Equal(unix.Fixes, IgcReader.Read([.. flight.File(lineEnd: "\n\n"), 0x1A]).Fixes);
        Assert.Equal(unix.Fixes, IgcReader.Read(flight.File(lineEnd: "\r")).Fixes);
    }

    /// <summary>Names, registrations, serial numbers, competition signs and comments are dropped while reading.</summary>
    [Fact]
    public void Nobody_is_named()
    {
        const string Head = "AXXX987SERIAL\nHFDTE120726\nHFPLTPILOTINCHARGE:Jöhanna Mäde\nHFGIDGLIDERID:D-9999\nHFCIDCOMPETITIONID:JM\nLXXXJohanna was here\n";
        var log = Read(Head + Fix("120000"));
        Assert.Equal("XXX", log.Recorder);
        var all = log.ToString() + string.Join("|", log.Remarks.Select(remark => remark.Message.ToString()));
        Assert.DoesNotContain("hanna", all, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("9999", all, StringComparison.Ordinal);
        Assert.DoesNotContain("987", all, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("AXXX\nHFDTE120726\n")]
    [InlineData("hello")]
    [InlineData("BBBBBBBBBBBBBBBBBBBBBBBBBBBBBBBBBBBBBBBB")]
    public void A_file_without_a_fix_is_refused(string text) => Assert.Throws<InvalidLogException>(() => Read(text));

    /// <summary>Any bytes are read or refused; nothing else is thrown, whatever stands where.</summary>
    [Fact]
    public void Damaged_files_are_read_or_refused()
    {
        var file = new MadeFlight(4).Fly(40, 0, 1).Fly(100, 15, 2).File("AXXX123\r\nHFDTE120726\r\nI023638ENL3941SIU\r\n");
        var runs = int.TryParse(Environment.GetEnvironmentVariable("DAYBRIEF_MUTATIONS"), out var asked) ? asked : 3000;
        var random = Numerics.CounterRandom.FromSeed(7);
        for (var run = 0; run < runs; run++)
        {
            var damaged = file.ToArray();
            for (var i = 0; i < 6; i++)
                damaged[(int)(random.Uniform((run * 12) + (2 * i)) * damaged.Length)] = (byte)(random.Bits((run * 12) + (2 * i) + 1) & 0xFF);
            var kept = damaged.AsSpan(0, run % 5 == 0 ? (int)(random.Uniform(1_000_000 + run) * damaged.Length) : damaged.Length);
            try
            {
                var log = IgcReader.Read(kept);
                Assert.All(Circling.FlightFigures.Of(log).Climbs, climb => Assert.True(double.IsFinite(climb.MeanMs) && double.IsFinite(climb.BankDeg)));
            }
            catch (InvalidLogException refused)
            {
                Assert.NotEmpty(refused.Message);
            }
        }
    }

    private static FlightLog Read(string text) => IgcReader.Read(Encoding.Latin1.GetBytes(text));

    private static string Fix(string time) => $"B{time}5206343N00006198WA0058700558\n";
}
