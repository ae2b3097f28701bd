namespace DayBrief.Soundings.Formats.Bufr;

/// <summary>Small messages whose bits are written out by the rules of [WMO306] volume I.2 (compression and operators from
/// memory of the regulations).</summary>
public sealed class BufrDecoderTests
{
    /// <summary>Compressed: reference, six bits of width, then an increment for each subset; all ones is missing, and no
    /// width means the same for all. Pressure 1000.0, 950.0 hPa and missing; temperature 288.15 K for all.</summary>
    [Fact]
    public void Compressed_subsets_get_reference_and_increment()
    {
        var bits = BufrWriter.Of((9500, 14), (10, 6), (500, 10), (0, 10), (1023, 10), (28815, 16), (0, 6));
        var subsets = Decode(bits.Message(3, compressed: true, 007004, 012101));
        Assert.Equal([100_000, 95_000, null], subsets.Select(subset => subset[0].Number));
        Assert.All(subsets, subset => Assert.Equal(288.15, subset[1].Number!.Value, tolerance: 1e-9));
    }

    [Fact]
    public void Compressed_texts_count_their_width_in_octets()
    {
        var bits = new BufrWriter();
        bits.Missing(72);
        bits.Write(9, 6);
        foreach (var c in "SHIP1    SHIP2    ")
        {
            bits.Write(c, 8);
        }

        Assert.Equal(["SHIP1", "SHIP2"], Decode(bits.Message(2, compressed: true, 001011)).Select(subset => subset[0].Text));
    }

    /// <summary>Table C: 2 07 001 makes pressure 18 bits in Pa and height 21 bits in 0.1 m with reference −10,000.</summary>
    [Fact]
    public void Increased_precision_changes_scale_reference_and_width()
    {
        var bits = BufrWriter.Of((96_543, 18), (12_345, 21), (9_654, 14));
        var values = Decode(bits.Message(1, compressed: false, 207001, 007004, 010009, 207000, 007004))[0];
        Assert.Equal(96_543, values[0].Number!.Value, tolerance: 1e-6);
        Assert.Equal(234.5, values[1].Number!.Value, tolerance: 1e-9);
        Assert.Equal(96_540, values[2].Number!.Value, tolerance: 1e-6);
    }

    /// <summary>2 04 004: four bits of quality before each element but class 31, until 2 04 000.</summary>
    [Fact]
    public void Quality_bits_are_passed_over()
    {
        var bits = BufrWriter.Of((2, 6), (15, 4), (9_000, 14), (8_000, 14));
        var values = Decode(bits.Message(1, compressed: false, 204004, 031021, 007004, 204000, 007004))[0];
        Assert.Equal([2, 90_000, 80_000], values.Select(value => value.Number));
    }

    /// <summary>2 01 131 and 2 02 129: three bits wider, one figure more.</summary>
    [Fact]
    public void Changed_width_and_scale_are_followed()
    {
        var bits = BufrWriter.Of((96_540, 17));
        Assert.Equal(96_540, Decode(bits.Message(1, compressed: false, 201131, 202129, 007004))[0][0].Number!.Value, tolerance: 1e-6);
    }

    [Fact]
    public void Local_elements_of_a_stated_width_are_passed_over()
    {
        var bits = BufrWriter.Of((7, 3), (9_000, 14));
        Assert.Equal([90_000], Decode(bits.Message(1, compressed: false, 206003, 012255, 007004))[0].Select(value => value.Number));
    }

    /// <summary>2 22 000 begins quality information about the data before it, which is complete by then.</summary>
    [Fact]
    public void Quality_information_after_the_data_is_left() =>
        Assert.Equal([90_000], Decode(BufrWriter.Of((9_000, 14), (77, 8)).Message(1, compressed: false, 007004, 222000, 031031)).Single().Select(value => value.Number));

    [Fact]
    public void Every_sequence_expands_to_known_elements()
    {
        foreach (var number in new[] { 309005, 309006, 309007, 309008, 309013, 309014, 309017, 309018, 309050, 309051, 309052, 309057 })
        {
            Expand(BufrDescriptor.Parse(number));
        }
    }

    /// <summary>Bits of the parts of 3 09 052 and 3 09 057 as the WMO tables add up: 112, 44, 106, 45, 420, 168, 122.</summary>
    [Theory]
    [InlineData(301111, 112)]
    [InlineData(301113, 44)]
    [InlineData(301114, 106)]
    [InlineData(302049, 45)]
    [InlineData(301128, 420)]
    [InlineData(303054, 168)]
    [InlineData(303051, 122)]
    public void Sequences_have_the_width_of_the_tables(int number, int bits) =>
        Assert.Equal(bits, BufrTables.Sequence(BufrDescriptor.Parse(number))!.Sum(element => BufrTables.Element(element)!.Bits));

    private static void Expand(BufrDescriptor descriptor)
    {
        if (descriptor.F == 0)
        {
            Assert.NotNull(BufrTables.Element(descriptor));
        }
        else if (descriptor.F == 3)
        {
            Assert.All(BufrTables.Sequence(descriptor)!, Expand);
        }
    }

    private static IReadOnlyList<IReadOnlyList<BufrValue>> Decode(byte[] bytes) =>
        BufrDecoder.Decode(BufrMessage.Open(bytes, 0), new BufrBudget());
}
