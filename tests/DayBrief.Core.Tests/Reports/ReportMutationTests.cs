using System.Text;
using DayBrief.Soundings;

namespace DayBrief.Reports;

/// <summary>Damaged reports are read or refused; nothing else ever escapes. Seeded, so a failure comes back.</summary>
public sealed class ReportMutationTests
{
    private const string Metar = "METAR LTAC 011150Z AUTO 03013G25KT 310V080 9999 1500SW R10/0500D -TSRA BKN028CB //////TCU M02/M05 Q1020 RETS W15/H8 BECMG FM1210 VRB02KT 1 1/2SM TEMPO TL1300 VV001 NOSIG RMK RWY21L 05010KT";
    private const string Taf = "TAF AMD CYND 212034Z 2120/2201 19020G30KT P6SM BKN030 TX25/2212Z TNM01/2202Z FM212100 21020MPS 6SM -SHRA SCT010 TEMPO 2121/2123 VRB25G40KT 1/2SM +TSRA PROB30 TEMPO 2121/2122 CAVOK BECMG 2204/2206 NSW RMK NXT";

    private static readonly int Rounds =
        int.TryParse(Environment.GetEnvironmentVariable("DAYBRIEF_MUTATIONS"), out var rounds) ? rounds : 3000;

    [Theory]
    [InlineData(Metar)]
    [InlineData(Taf)]
    [InlineData("SAXX99 XXXX 010000\nMETAR\nAAAA 010000Z 00000KT CAVOK 10/05 Q1020=\nBBBB 010000Z NIL=\n" + Taf + "=\n" + Metar + "=")]
    public void A_damaged_report_is_read_or_refused(string seed)
    {
        var random = new Random(20261125);
        var original = Encoding.Latin1.GetBytes(seed);
        var read = 0;
        for (var round = 0; round < Rounds; round++)
        {
            var text = Encoding.Latin1.GetString(Mutation.Of(original, random));
            read += MetarReader.ReadAll(text).Count + TafReader.ReadAll(text).Count;
            try
            {
                MetarReader.Read(text);
                TafReader.Read(text);
            }
            catch (InvalidReportException refused)
            {
                Assert.NotEmpty(refused.Message);
            }
        }

        Assert.True(read > 0);
    }
}
