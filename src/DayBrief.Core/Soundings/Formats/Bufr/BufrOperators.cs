namespace DayBrief.Soundings.Formats.Bufr;

/// <summary>What the operators in force change about the elements that follow.</summary>
/// <remarks>[WMO306] volume I.2, Table C.</remarks>
internal sealed class BufrOperators
{
    private readonly Stack<int> _associated = new();
    private int _widthMore;
    private int _scaleMore;
    private int _precision;
    private int _textOctets;

    /// <summary>Bits of quality information before each element (2 04).</summary>
    public int AssociatedBits => _associated.Sum();

    /// <summary>Bits of the local element that follows (2 06); 0 if none.</summary>
    public int LocalBits { get; set; }

    /// <summary>Octets of text that stand in the stream (2 05); 0 if none.</summary>
    public int InlineTextOctets { get; private set; }

    /// <summary>False if the operator is not known here.</summary>
    public bool Apply(BufrDescriptor descriptor)
    {
        InlineTextOctets = 0;
        var y = descriptor.Y;
        switch (descriptor.X)
        {
            case 1:
                _widthMore = y == 0 ? 0 : y - 128;
                return true;
            case 2:
                _scaleMore = y == 0 ? 0 : y - 128;
                return true;
            case 4 when y == 0:
                return _associated.TryPop(out _);
            case 4:
                _associated.Push(y);
                return _associated.Count < 16;
            case 5:
                InlineTextOctets = y;
                return true;
            case 6:
                LocalBits = y;
                return true;
            case 7:
                _precision = y;
                return y <= 9;
            case 8:
                _textOctets = y;
                return true;
            default:
                return false;
        }
    }

    /// <summary>The element as the operators make it.</summary>
    public (int Bits, int Scale, double Reference) Changed(BufrElement element) => element.Kind switch
    {
        BufrKind.Text => (_textOctets > 0 ? 8 * _textOctets : element.Bits, 0, 0),
        BufrKind.Code => (element.Bits, 0, 0),
        _ => (
            element.Bits + _widthMore + (_precision == 0 ? 0 : ((10 * _precision) + 2) / 3),
            element.Scale + _scaleMore + _precision,
            element.Reference * Math.Pow(10, _precision)),
    };
}
