namespace DayBrief.Service.Languages;

public sealed class LanguageTests
{
    [Fact]
    public void A_translated_text_is_said_in_its_language_and_another_in_English()
    {
        Assert.Equal("Heute", Language.German["Today"]);
        Assert.Equal("Today", Language.English["Today"]);
        Assert.Equal("nobody translated this", Language.German["nobody translated this"]);
    }

    /// <summary>DIN 1333, DIN 5008 (from memory): decimal comma, point between thousands, full date.</summary>
    [Fact]
    public void German_writes_decimals_thousands_and_dates_its_own_way()
    {
        Assert.Equal("1.234,5", Language.German.Say($"{1234.5:#,0.0}"));
        Assert.Equal("Montag, 3. August 2026", new DateOnly(2026, 8, 3).ToString("dddd, d. MMMM yyyy", Language.German.Culture));
    }
}
