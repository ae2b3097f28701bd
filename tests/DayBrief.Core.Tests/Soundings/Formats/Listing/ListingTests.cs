using DayBrief.House;

namespace DayBrief.Soundings.Formats.Listing;

/// <summary>The listing that archives print: columns of fixed width under names and units. Own example, and a real one.</summary>
public sealed class ListingTests
{
    internal const string Example = """
        99999 ZZZZ Invented Observations at 06Z 21 Jun 2026

        -----------------------------------------------------------------------------
           PRES   HGHT   TEMP   DWPT   RELH   MIXR   DRCT   SKNT   THTA   THTE   THTV
            hPa     m      C      C      %    g/kg    deg   knot     K      K      K
        -----------------------------------------------------------------------------
         1000.0    162
          978.2    350   12.5    9.0     79   7.44    270      4  287.5  308.3  288.8
          950.0    598   12.9    7.0     67   6.66                290.3  309.2  291.5
          925.0    824   11.6                         285     12  291.2
          900.0   1057    9.5    3.8     67   5.62                291.2  307.3  292.2
          850.0   1536    5.2    1.5     77   5.04    290     18  291.5  306.3  292.4
          700.0   3094   -3.4  -14.0     44   1.84    300     25  298.6  304.7  299.0
          500.0   5700  -21.5  -40.5     16   0.24                306.8  307.7  306.8

        Station information and sounding indices

                                 Station number: 99999
                               Observation time: 260621/0600
                               Station latitude: 48.50
                              Station longitude: 9.25
                              Station elevation: 350.0
                                Showalter index: 6.82
        """;

    [Fact]
    public void A_listing_with_its_facts_is_read()
    {
        var sounding = Text.Read(Example);
        Assert.Equal(("Listing", "99999", 350.0), (sounding.Source.Format, sounding.Source.Station, sounding.Source.Elevation!.Value.Metres));
        Assert.Equal(new DateTimeOffset(2026, 6, 21, 6, 0, 0, TimeSpan.Zero), sounding.Source.ValidAt);
        Assert.Equal(48.5, sounding.Source.Position!.Value.LatitudeDegrees, tolerance: 1e-9);
        IsTheExample(sounding);
    }

    [Theory]
    [MemberData(nameof(Dresses))]
    public void The_same_levels_come_out_of_every_dress(string name, string text)
    {
        Assert.NotEmpty(name);
        IsTheExample(Text.Read(text));
    }

    public static TheoryData<string, string> Dresses
    {
        get
        {
            var bare = Example[Example.IndexOf("   PRES", StringComparison.Ordinal)..Example.IndexOf("Station information", StringComparison.Ordinal)];
            var units = bare.Split('\n')[1];
            return new()
            {
                { "page", $"<HTML>\n<TITLE>Soundings</TITLE>\n<BODY>\n<H2>99999 ZZZZ Invented Observations at 06Z 21 Jun 2026</H2>\n<PRE>\n{bare}\n</PRE><H3>Station information</H3><PRE>\n Station number: 99999\n</PRE>\n<P>Description of the <A HREF=\"/help\">columns</A>.\n</BODY></HTML>" },
                { "page glued", $"<html><body><pre>{bare}</pre></body></html>" },
                { "mail", string.Join('\n', Example.Split('\n').Select(line => "> " + line)) },
                { "mail twice", string.Join('\n', Example.Split('\n').Select(line => ">> " + line)) },
                { "names and units only", bare },
                { "short names imply units", bare.Replace(units + "\n", "", StringComparison.Ordinal) },
                { "units in brackets", bare.Replace(units + "\n", "", StringComparison.Ordinal).Replace("   PRES   HGHT   TEMP   DWPT   RELH   MIXR   DRCT   SKNT   THTA   THTE   THTV", "p[hPa]   z[m]   T[C]  Td[C]  RH[%] w[g/kg] dd[deg] ff[kt]   th    the    thv", StringComparison.Ordinal) },
                { "decimal commas", bare.Replace('.', ',') },
                { "fixed spaces", bare.Replace(' ', '\u00A0') },
                { "CRLF", bare.Replace("\n", "\r\n", StringComparison.Ordinal) },
                { "source after it", bare + "\nSource: an archive of ascents, 2026\n" },
                { "fillers", bare.Replace("900.0   1057    9.5    3.8     67   5.62                291.2", "900.0   1057    9.5    3.8     67   5.62   9999   9999  291.2", StringComparison.Ordinal) },
            };
        }
    }

    /// <summary>Where spaces were lost, a line with blanks cannot be told apart: it is left out and counted, never shifted.</summary>
    [Fact]
    public void Lines_that_cannot_be_told_apart_are_counted_and_left_out()
    {
        var bare = Example[Example.IndexOf("   PRES", StringComparison.Ordinal)..Example.IndexOf("Station information", StringComparison.Ordinal)];
        var squeezed = string.Join('\n', bare.Split('\n').Select(line => string.Join(' ', line.Split(' ', StringSplitOptions.RemoveEmptyEntries))))
            .Replace("500.0 5700 -21.5 -40.5 16 0.24 306.8 307.7 306.8", "500.0 5700 -21.5 -40.5 16 0.24 300 40 306.8 307.7 306.8\n450.0 6450 -27.5 -44.5 18 0.20 300 45 309.8 310.7 309.8\n400.0 7300 -33.5 -50.5 18 0.10 300 45 309.8 310.7 309.8", StringComparison.Ordinal);
        var sounding = Text.Read(squeezed);
        Assert.Equal([978.2, 850, 700, 500, 450, 400], sounding.Levels.Select(level => Math.Round(level.Pressure.Hectopascals, 6)));
        var remark = Assert.Single(sounding.Remarks, remark => remark.Code == "rows-left-out");
        Assert.Contains("4 of 10", remark.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Wind_without_a_unit_is_asked_for()
    {
        var text = Example.Replace("SKNT", "SPED", StringComparison.Ordinal);
        text = text.Remove(text.IndexOf("            hPa", StringComparison.Ordinal) is var at and >= 0 ? at : 0, 0);
        var units = text.Split('\n').First(line => line.Contains("hPa", StringComparison.Ordinal));
        var refusal = Text.Refused(text.Replace(units + "\n", "", StringComparison.Ordinal));
        Assert.Equal(("unit-missing", "SPED"), (refusal.Code, refusal.Field));
    }

    /// <summary>The listing of 83779 in the reference data, against its own lines.</summary>
    [Fact]
    public void A_real_listing_equals_its_lines()
    {
        var path = Repository.Shared("soundings", "original", "fm35_saopaulo_20230223_12z.listing.txt");
        var lines = File.ReadAllLines(path).Select(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            .Where(words => words.Length == 11 && double.TryParse(words[0], out _)).DistinctBy(words => words[0]).ToArray();
        var sounding = SoundingReader.Read(File.ReadAllBytes(path), "listing");
        Assert.Equal(("83779", new DateTimeOffset(2023, 2, 23, 12, 0, 0, TimeSpan.Zero)), (sounding.Source.Station, sounding.Source.ValidAt));
        Assert.Equal(-23.52, sounding.Source.Position!.Value.LatitudeDegrees, tolerance: 1e-9);
        foreach (var words in lines)
        {
            var level = Assert.Single(sounding.Levels, level => Math.Abs(level.Pressure.Hectopascals - double.Parse(words[0])) < 1e-6);
            Assert.Equal(double.Parse(words[2]), level.Temperature!.Value.Celsius, tolerance: 1e-6);
            Assert.Equal(double.Parse(words[3]), level.DewPoint!.Value.Celsius, tolerance: 1e-6);
            Assert.Equal(double.Parse(words[7]), level.Wind!.Value.Speed.MetresPerSecond, tolerance: 1e-6);
        }

        Assert.True(lines.Length > 50);
    }

    private static void IsTheExample(Sounding sounding)
    {
        var levels = sounding.Levels.Where(level => level.Temperature is not null).ToArray();
        Assert.Equal([978.2, 950, 925, 900, 850, 700, 500], levels.Select(level => Math.Round(level.Pressure.Hectopascals, 6)));
        Assert.Equal([12.5, 12.9, 11.6, 9.5, 5.2, -3.4, -21.5], levels.Select(level => Math.Round(level.Temperature!.Value.Celsius, 6)));
        Assert.Equal([9.0, 7.0, null, 3.8, 1.5, -14.0, -40.5], levels.Select(level => level.DewPoint is { } dewPoint ? Math.Round(dewPoint.Celsius, 6) : (double?)null));
        Assert.Equal([350, 598, 824, 1057, 1536, 3094, 5700.0], levels.Select(level => Math.Round(level.Height!.Value.Metres, 6)));
        Assert.Equal([4.0, null, 12, null, 18, 25, null], levels.Select(level => level.Wind is { } wind ? Math.Round(wind.Speed.Knots, 6) : (double?)null));
        Assert.Equal([270.0, null, 285, null, 290, 300, null], levels.Select(level => level.Wind is { } wind ? Math.Round(wind.FromDegrees, 6) : (double?)null));
    }
}
