using System.Text;
using DayBrief.Reports;
using DayBrief.Soundings.Formats.Bufr;
using DayBrief.Soundings.Formats.Igra;
using DayBrief.Soundings.Formats.Temp;

namespace DayBrief.Soundings;

/// <summary>Megabytes made to be slow: each costs work that grows with its length alone.</summary>
/// <remarks>Work is counted as bytes allocated, which no load of the machine changes. What is quadratic without allocating is
/// not counted so; it would take hours on megabytes, and the run would not end.</remarks>
public sealed class HostileInputTests
{
    /// <summary>Megabytes; the environment asks for the full ten, a quick run takes three.</summary>
    private static readonly int Size =
        ((int.TryParse(Environment.GetEnvironmentVariable("DAYBRIEF_HOSTILE_MB"), out var megabytes) ? megabytes : 3) * 1024 * 1024) - 1000;

    /// <summary>Bytes allocated for each byte of input: from 2 to 229 as measured with 3 megabytes; something quadratic would
    /// need hundreds of thousands.</summary>
    private const double MostPerByte = 400;

    public static TheoryData<string> All => [.. Inputs.Keys];

    private static Dictionary<string, Func<byte[]>> Inputs { get; } = new()
    {
        ["one line"] = () => Repeat("x"),
        ["part names"] = () => Repeat("TTAA "),
        ["headers of reports"] = () => Repeat("TTBB 72121 72235 "),
        ["many stations"] = () => Numbered(i => $"TTAA 72121 {i % 100_000:00000} 99000 24416 18006 00089= "),
        ["one report of many groups"] = () => [.. Encoding.ASCII.GetBytes("TTBB 72121 72235 00000 24416 "), .. Repeat("11985 23605 ")],
        ["broken groups"] = () => [.. Encoding.ASCII.GetBytes("TTBB 72121 72235 00000 24416 "), .. Repeat("1198x ")],
        ["winds by height"] = () => [.. Encoding.ASCII.GetBytes(DomainMessages.A), .. Repeat("PPBB 72120 72235 90123 18006 19033 20037= ")],
        ["ascents repeated"] = () => Repeat(DomainMessages.A + "\n"),
        ["CSV of one row"] = () => [.. Encoding.ASCII.GetBytes("pressure_hpa,temperature_c\n"), .. Repeat("1,")],
        ["CSV of open quotes"] = () => [.. Encoding.ASCII.GetBytes("pressure_hpa,temperature_c\n"), .. Repeat("\"1,")],
        ["CSV of times"] = () => [.. Encoding.ASCII.GetBytes("time,pressure_hpa,temperature_c\n"), .. Numbered(i => $"{new DateTime(2000, 1, 1).AddMinutes(i):yyyy-MM-ddTHH:mm}Z,{1000 - (i % 7)},1\n")],
        ["CSV of comments"] = () => Repeat("# station: x\n"),
        ["JSON of brackets"] = () => Repeat("["),
        ["JSON of levels"] = () => [.. Encoding.ASCII.GetBytes("["), .. Repeat("{\"pressureHpa\":1,\"a\":1},"), .. Encoding.ASCII.GetBytes("{}]")],
        ["JSON of profiles"] = () => [.. Encoding.ASCII.GetBytes("{\"profiles\":["), .. Repeat("{\"levels\":[]},"), .. Encoding.ASCII.GetBytes("{}]}")],
        ["IGRA of headers"] = () => Repeat("#USM00072403 2016 10 06 12 1103    0 ncdc-nws ncdc-nws  389833  -774669\n"),
        ["IGRA of ascents"] = () => Repeat(IgraTests.Invented + "\n"),
        ["BUFR of beginnings"] = () => Repeat("BUFR\u0000\u0000\u0000\u0003"),
        ["BUFR of messages"] = () => Repeat(TestVector.Bytes),
        ["BUFR of frames"] = () => Repeat(new BufrWriter().Message(1, false, 101255, 101255, 205000)),
    };

    [Theory]
    [MemberData(nameof(All))]
    public void Megabytes_cost_work_in_proportion_to_their_length(string name)
    {
        var bytes = Inputs[name]();
        Proportionate(bytes.Length, () =>
        {
            try
            {
                SoundingReader.Read(bytes, name);
            }
            catch (InvalidSoundingException refused)
            {
                Assert.NotEmpty(refused.Refusals[0].Message);
            }
        });
    }

    /// <summary>A replication of 255 times 255 elements of no width would go on for ever, message after message: the decoder
    /// counts each of its steps, for the input as a whole.</summary>
    [Fact]
    public void Frames_that_hold_nothing_end_with_the_budget_of_steps()
    {
        var budget = new BufrBudget();
        Assert.Throws<InvalidSoundingException>(() => BufrReport.Read(Inputs["BUFR of frames"](), budget));
        // Beyond it each message is refused at its first step, and after a hundred of them the rest is not looked at.
        Assert.InRange(budget.Spent, BufrBudget.MostValues, BufrBudget.MostValues + BufrReport.MostRefused + 1);
    }

    [Theory]
    [InlineData("METAR ")]
    [InlineData("METAR EDDF 011150Z 00000KT ")]
    [InlineData("TAF EDDF 011100Z 0112/0212 00000KT TEMPO ")]
    [InlineData("EDDF 011150Z ")]
    public void Megabytes_of_reports_cost_work_in_proportion_to_their_length(string piece)
    {
        var text = Encoding.ASCII.GetString(Repeat(piece));
        Proportionate(text.Length, () =>
        {
            MetarReader.ReadAll(text);
            TafReader.ReadAll(text);
        });
    }

    private static void Proportionate(int length, Action read)
    {
        var before = GC.GetAllocatedBytesForCurrentThread();
        read();
        var perByte = (GC.GetAllocatedBytesForCurrentThread() - before) / (double)length;
        TestContext.Current.TestOutputHelper?.WriteLine($"{perByte:0.0} bytes allocated for each");
        Assert.True(perByte < MostPerByte, $"{perByte:0} bytes allocated for each byte of input");
    }

    private static byte[] Repeat(string piece) => Repeat(Encoding.Latin1.GetBytes(piece));

    private static byte[] Repeat(byte[] piece)
    {
        var bytes = new byte[Size / piece.Length * piece.Length];
        for (var at = 0; at < bytes.Length; at += piece.Length)
        {
            piece.CopyTo(bytes, at);
        }

        return bytes;
    }

    private static byte[] Numbered(Func<int, string> piece)
    {
        var text = new StringBuilder();
        for (var i = 0; text.Length < Size - 200; i++)
        {
            text.Append(piece(i));
        }

        return Encoding.ASCII.GetBytes(text.ToString());
    }
}
