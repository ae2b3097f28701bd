namespace DayBrief.Soundings.Formats.Bufr;

/// <summary>How much work one input may cost: 20,000 levels of 15 values, several times over. A crafted replication of
/// nothing would otherwise go on for hours.</summary>
internal sealed class BufrBudget
{
    internal const int MostValues = 2_000_000;

    /// <summary>Steps of the decoder and values so far.</summary>
    internal int Spent { get; private set; }

    public void Spend(int values, long byteOffset)
    {
        Spent += values;
        if (Spent > MostValues)
        {
            throw new Origin(ByteOffset: byteOffset).Refuse("too-many-levels", $"the input holds more than {MostValues:N0} values.");
        }
    }
}
