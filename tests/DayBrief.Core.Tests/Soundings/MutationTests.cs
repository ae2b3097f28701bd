using System.Text;
using DayBrief.Soundings.Formats;
using DayBrief.Soundings.Formats.Bufr;
using DayBrief.Soundings.Formats.Igra;
using DayBrief.Soundings.Formats.Listing;
using DayBrief.Soundings.Formats.Pasted;
using DayBrief.Soundings.Formats.Temp;

namespace DayBrief.Soundings;

/// <summary>Damaged inputs are read or refused; nothing else ever escapes. Seeded, so a failure comes back.</summary>
public sealed class MutationTests
{
    /// <summary>How many damaged inputs of each kind; the environment asks for more than a quick run does.</summary>
    private static readonly int Rounds =
        int.TryParse(Environment.GetEnvironmentVariable("DAYBRIEF_MUTATIONS"), out var rounds) ? rounds : 3000;

    public static TheoryData<string, string> Seeds => new()
    {
        { "FM 35", DomainMessages.A },
        { "FM 35 part A", DomainMessages.B },
        { "CSV", "# station: 1\n# elevation_m: 300\npressure_hpa;height_m;temperature_c;rh_pct;wind_dir_deg;wind_speed_kt\n1000;100;15,5;80;270;5\n950;;12;70;280;10\n900;;9;;;\n850;;6;50;290;15\n700;;-3;40;300;20\n500;;-20;20;310;30\n" },
        { "listing", ListingTests.Example },
        { "listing of a page", $"<html><H2>Observations at 06Z 21 Jun 2026</H2>\n<PRE>\n{ListingTests.Example}</PRE></html>" },
        { "archive CSV", ArchiveCsvTests.Archive },
        { "names alone", "p;z;t;td\n1000;110;15,5;5\n925;770;10,5;0\n850;1.470;6;-4\n700;3.020;-4;-14\n600;4.210;-12;-22\n500;5.580;-21;-31\n" },
        { "JSON list", JsonListTests.Levels },
        { "quoted FM 35", "<pre>\n> " + DomainMessages.A.ToLowerInvariant().Replace("\n", "\n> ", StringComparison.Ordinal) + "</pre>" },
        { "IGRA", IgraTests.Invented },
        { "profile CSV", ProfileTests.Csv },
        { "profile JSON", ProfileTests.Json },
        { "JSON", "{\"station\":\"x\",\"elevationM\":300,\"qnhHpa\":1020,\"levels\":[{\"heightM\":300,\"temperatureC\":15,\"dewPointC\":9},{\"heightM\":600,\"temperatureC\":12},{\"heightM\":900,\"temperatureC\":9},{\"heightM\":1500,\"temperatureC\":5},{\"heightM\":3000,\"temperatureC\":-4},{\"heightM\":5000,\"temperatureC\":-17}]}" },
    };

    [Theory]
    [MemberData(nameof(Seeds))]
    public void A_damaged_text_is_read_or_refused(string name, string seed) => Damage(name, Encoding.UTF8.GetBytes(seed));

    [Fact]
    public void Damaged_BUFR_is_read_or_refused() => Damage("BUFR", BufrSamples.Ascent());

    /// <summary>A message that is in order but says something else is the harder case: only bits of its data change.</summary>
    [Fact]
    public void BUFR_with_other_data_is_read_or_refused()
    {
        var original = BufrSamples.Ascent();
        Damage("BUFR data", original, random =>
        {
            var bytes = original.ToArray();
            for (var times = 1 + random.Next(20); times > 0; times--)
            {
                bytes[random.Next(8 + 22 + 9, bytes.Length - 4)] = (byte)random.Next(256);
            }

            return bytes;
        });
    }

    private static void Damage(string name, byte[] original, Func<Random, byte[]>? damage = null)
    {
        var random = new Random(20261125);
        var read = 0;
        for (var round = 0; round < Rounds; round++)
        {
            var bytes = damage is null ? Mutation.Of(original, random) : damage(random);
            try
            {
                var sounding = SoundingReader.Read(bytes, name);
                Assert.True(sounding.Levels.All(level => double.IsFinite(level.Pressure.Pascals)));
                read++;
            }
            catch (InvalidSoundingException refused)
            {
                Assert.All(refused.Refusals, refusal => Assert.NotEmpty(refusal.Message));
            }
        }

        // Most single damages leave an ascent or are noticed; both must happen, or the mutations are not worth anything.
        Assert.InRange(read, 1, Rounds - 1);
    }
}
