namespace DayBrief.Soundings.Formats.Temp;

/// <summary>Message A with the headings of FM 36 (ship) and FM 38 (mobile), invented call sign and position; layout by
/// [WMO306] from memory.</summary>
public sealed class MovingStationTests
{
    [Fact]
    public void A_ship_has_a_call_sign_and_a_position()
    {
        var sounding = Text.Read(Ship("UU", "QQ", "ABCD 72121 99487 70095 18279"));
        Assert.Equal(("ABCD", new DayAndHour(22, 12)), (sounding.Source.Station, sounding.Source.DayAndHour));
        Assert.Equal((48.7, -9.5), (sounding.Source.Position!.Value.LatitudeDegrees, sounding.Source.Position!.Value.LongitudeDegrees));
        Assert.Equal(Text.Read(DomainMessages.A).Levels, sounding.Levels);
        Assert.Equal(Text.Read(DomainMessages.A).WindsByHeight, sounding.WindsByHeight);
    }

    [Fact]
    public void A_mobile_station_has_an_elevation_too()
    {
        var sounding = Text.Read(Ship("II", "EE", "72121 99487 10095 18279 03501"));
        Assert.Null(sounding.Source.Station);
        Assert.Equal((48.7, 9.5), (sounding.Source.Position!.Value.LatitudeDegrees, sounding.Source.Position!.Value.LongitudeDegrees));
        Assert.Equal(350, sounding.Source.Elevation!.Value.Metres);
        Assert.Equal(Text.Read(DomainMessages.A).Levels, sounding.Levels);
    }

    [Theory]
    [InlineData("15001", 1500)]
    [InlineData("03506", 106.68)]
    public void Elevations_may_be_in_feet(string group, double metres)
    {
        var text = Ship("II", "EE", $"72121 99487 10095 18279 {group}");
        Assert.Equal(metres, Text.Read(text).Source.Elevation!.Value.Metres, tolerance: 1e-9);
    }

    private static string Ship(string temp, string pilot, string heading) => DomainMessages.A
        .Replace("TTAA 72121 72235", $"{temp}AA {heading}", StringComparison.Ordinal)
        .Replace("TTBB 72120 72235", $"{temp}BB {heading}", StringComparison.Ordinal)
        .Replace("PPBB 72120 72235", $"{pilot}BB {heading}", StringComparison.Ordinal);
}
