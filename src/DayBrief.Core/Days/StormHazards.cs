namespace DayBrief.Days;

/// <summary>Cautions of thunder, showers and tall cloud.</summary>
internal static class StormHazards
{
    public static IEnumerable<Hazard?> Of(Brief brief)
    {
        var store = ThunderInStore.Of(brief);
        var told = WeatherHazards.Of(brief).Select(hazard => Likelier(hazard, store)).ToArray();
        var cloud = brief.Day.Cloud;
        var thunder = At(HazardKind.Thunder, cloud.Thunder);
        var showers = thunder is null ? At(HazardKind.Showers, cloud.Showers) : null;
        var tall = thunder is null && showers is null ? At(HazardKind.Overdevelopment, cloud.Overdevelopment) : null;
        Hazard?[] all = [.. told, thunder, showers, tall, Spread(brief)];
        var stormy = all.Any(hazard => hazard?.Kind is HazardKind.Thunder or HazardKind.Cumulonimbus or HazardKind.Showers);
        return
        [
            .. all,
            all.Any(hazard => hazard?.Kind is HazardKind.Thunder) ? null : store,
            stormy ? null : Downdraught(brief, all.FirstOrDefault(hazard => hazard?.Kind is HazardKind.Overdevelopment)),
        ];
    }

    /// <summary>A storm that a forecast calls probable is as likely as the energy of the air makes it.</summary>
    private static Hazard Likelier(Hazard hazard, Hazard? store) =>
        hazard is { Kind: HazardKind.Thunder or HazardKind.Hail or HazardKind.Cumulonimbus, Risk: { } risk } && store?.Risk?.Chance > risk.Chance
            ? hazard with { Risk = risk with { Chance = store.Risk.Value.Chance } }
            : hazard;

    /// <summary>When it spreads is not known.</summary>
    private static Hazard? Spread(Brief brief) =>
        brief.Day.Times.FirstUsable is not null && brief.Day.Cloud.SpreadOut ? Daylight.WithThermals(brief, new(HazardKind.SpreadOut)) : null;

    /// <summary>[FAA-13A] ch. 9: air falls beside and below large cumulus, and where they dissolve. Showers and thunder say it
    /// themselves.</summary>
    private static Hazard? Downdraught(Brief brief, Hazard? tall) =>
        tall is not null
            ? new(HazardKind.Downdraught, brief.Day.Cloud.Base?.Metres) { From = tall.From, To = tall.To, About = "tall" }
            : Spread(brief) is { } spread ? spread with { Kind = HazardKind.Downdraught, Value = brief.Day.Cloud.Base?.Metres, About = "spread" } : null;

    private static Hazard? At(HazardKind kind, DateTimeOffset? from) => from is null ? null : new(kind) { From = from };
}
