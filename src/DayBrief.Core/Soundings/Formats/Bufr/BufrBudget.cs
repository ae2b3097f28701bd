namespace DayBrief.Soundings.Formats.Bufr;

/// <summary>How much work one input may cost: 20,000 levels of 15 values, several times over. A crafted replication of
/// nothing would otherwise go on for hours.</summary>
internal sealed class BufrBudget
{
    private const int MostValues = 2_000_000;

    private int _spent;

    public void Spend(int values, long byteOffset)
    {
        _spent += values;
        if (_spent > MostValues)
        {
            throw new Origin(ByteOffset: byteOffset).Refuse("too-many-levels", $"the input holds more than {MostValues:N0} values.");
        }
    }
}
