using System.Text;
using DayBrief.Texts;

namespace DayBrief.Soundings.Formats.Bufr;

/// <summary>Decodes the data section: walks the descriptors, and gives each subset its values in order.</summary>
internal sealed class BufrDecoder
{
    private const int MostNesting = 16;

    private readonly BufrMessage _message;
    private readonly BitReader _bits;
    private readonly List<BufrValue>[] _subsets;
    private BufrOperators _operators = new();
    private bool _isAtQuality;
    private readonly BufrBudget _budget;
    private int _current;

    private BufrDecoder(BufrMessage message, BufrBudget budget)
    {
        _budget = budget;
        if (message.Subsets is < 1 or > 1000)
        {
            throw Here(message.Offset).Refuse("bufr-subsets", $"the message has {message.Subsets} subsets; 1 to 1,000 are read.");
        }

        _message = message;
        _bits = new(message.Data, message.DataOffset);
        _subsets = [.. Enumerable.Range(0, message.Subsets).Select(_ => new List<BufrValue>())];
    }

    public static IReadOnlyList<IReadOnlyList<BufrValue>> Decode(BufrMessage message, BufrBudget budget)
    {
        var decoder = new BufrDecoder(message, budget);
        for (decoder._current = 0; decoder._current < (message.IsCompressed ? 1 : message.Subsets); decoder._current++)
        {
            decoder._operators = new();
            decoder.Walk(message.Descriptors, 0);
        }

        return decoder._subsets;
    }

    private void Walk(IReadOnlyList<BufrDescriptor> descriptors, int depth)
    {
        if (depth > MostNesting)
        {
            throw Here(_message.Offset).Refuse("bufr-nesting", "the descriptors are nested too deeply.");
        }

        for (var i = 0; i < descriptors.Count && !_isAtQuality; i++)
        {
            Step(1);
            var descriptor = descriptors[i];
            switch (descriptor.F)
            {
                case 0:
                    Element(descriptor);
                    break;
                case 1:
                    i += Replicate(descriptors, i, depth);
                    break;
                case 2:
                    Operator(descriptor);
                    break;
                default:
                    Walk(BufrTables.Sequence(descriptor) ?? throw Unknown(Words.Of($"the sequence {descriptor}")), depth + 1);
                    break;
            }
        }
    }

    /// <summary>Repeats the X descriptors that follow, and returns how many of the list it has used.</summary>
    private int Replicate(IReadOnlyList<BufrDescriptor> descriptors, int at, int depth)
    {
        var (count, used) = (descriptors[at].Y, 0);
        if (count == 0)
        {
            var factor = at + 1 < descriptors.Count ? descriptors[at + 1] : default;
            if (factor is not { F: 0, X: 31 })
            {
                throw Unknown(Words.Of($"a replication without its count ({descriptors[at]})"));
            }

            Element(factor);
            count = (int)(_subsets[_current][^1].Number ?? 0);
            used = 1;
        }

        var body = descriptors.Skip(at + 1 + used).Take(descriptors[at].X).ToArray();
        for (var n = 0; n < count && !_isAtQuality; n++)
        {
            Walk(body, depth + 1);
        }

        return used + body.Length;
    }

    private void Operator(BufrDescriptor descriptor)
    {
        // Quality information (2 22 and on) follows the data it is about; with one pass through the stream it can be left.
        _isAtQuality = descriptor.X is >= 22 and <= 37 && (_message.IsCompressed || _message.Subsets == 1);
        if (!_isAtQuality && !_operators.Apply(descriptor))
        {
            throw Unknown(Words.Of($"the operator {descriptor}"));
        }

        if (_operators.InlineTextOctets > 0)
        {
            Texts(descriptor.Number, 8 * _operators.InlineTextOctets);
        }
    }

    private void Element(BufrDescriptor descriptor)
    {
        if (_operators.LocalBits > 0)
        {
            Numbers(descriptor.Number, _operators.LocalBits, 0, 0, keep: false);
            _operators.LocalBits = 0;
            return;
        }

        var element = BufrTables.Element(descriptor) ?? throw Unknown(Words.Of($"the element {descriptor}"));
        if (_operators.AssociatedBits is > 0 and var quality && descriptor.X != 31)
        {
            Numbers(descriptor.Number, Math.Min(quality, 64), 0, 0, keep: false);
        }

        var (bits, scale, reference) = _operators.Changed(element);
        if (element.Kind == BufrKind.Text)
        {
            Texts(descriptor.Number, bits);
        }
        else if (bits is > 0 and <= 32)
        {
            Numbers(descriptor.Number, bits, scale, reference, keep: true);
        }
        else
        {
            throw Unknown(Words.Of($"a width of {bits} bits for the element {descriptor}"));
        }
    }

    private void Numbers(int number, int bits, int scale, double reference, bool keep)
    {
        var offset = _bits.ByteOffset;
        var raw = _bits.Read(bits);
        if (!_message.IsCompressed)
        {
            Keep(_subsets[_current], number, IsMissing(raw, bits, number) ? null : raw, scale, reference, keep, offset);
            return;
        }

        var increment = (int)_bits.Read(6);
        foreach (var subset in _subsets)
        {
            var more = _bits.Read(increment);
            var missing = increment == 0 ? IsMissing(raw, bits, number) : IsMissing(more, increment, number);
            Keep(subset, number, missing ? null : raw + (double)more, scale, reference, keep, offset);
        }
    }

    private static void Keep(List<BufrValue> subset, int number, double? raw, int scale, double reference, bool keep, long offset)
    {
        if (keep)
        {
            var value = raw + reference;
            subset.Add(new(number, scale >= 0 ? value / Math.Pow(10, scale) : value * Math.Pow(10, -scale), null, offset));
        }
    }

    private void Texts(int number, int bits)
    {
        Step(bits / 64);
        var offset = _bits.ByteOffset;
        var text = Text(bits);
        var increment = _message.IsCompressed ? 8 * (int)_bits.Read(6) : 0;
        for (var i = 0; i < (_message.IsCompressed ? _subsets.Length : 1); i++)
        {
            var own = increment > 0 ? Text(increment) : text;
            _subsets[_message.IsCompressed ? i : _current].Add(new(number, null, own, offset));
        }
    }

    // All ones is missing; blanks and zeros fill up.
    private string? Text(int bits)
    {
        var text = new StringBuilder();
        for (; bits >= 8; bits -= 8)
        {
            var octet = (char)_bits.Read(8);
            text.Append(octet is >= ' ' and < '\u007F' ? octet : ' ');
        }

        return text.ToString().Trim() is { Length: > 0 } given ? given : null;
    }

    // Counts (class 31) and single bits have no missing value.
    private static bool IsMissing(ulong raw, int bits, int number) =>
        bits > 1 && number / 1000 != 31 && raw == (bits == 64 ? ulong.MaxValue : (1UL << bits) - 1);

    private void Step(int steps) => _budget.Spend(steps * (_message.IsCompressed ? _subsets.Length : 1), _bits.ByteOffset);

    private InvalidSoundingException Unknown(Words what) => Here(_bits.ByteOffset).Refuse(
        "bufr-not-supported", $"{what} is not read here. Vertical soundings of the templates 3 09 052, 3 09 057 and 3 09 007 are.");

    private static Origin Here(long offset) => new(ByteOffset: offset);
}
