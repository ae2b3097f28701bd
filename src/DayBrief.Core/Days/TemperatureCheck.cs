using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>The maximum temperature asked for against the one that sun and ground give.</summary>
/// <param name="Asked">The temperature asked for: of the screen, or of the stirred layer.</param>
/// <param name="EnergyBalance">What the energy balance (or the prescribed flux) reaches by itself; null without heating.</param>
/// <param name="HeatFactor">What the heating was multiplied with.</param>
/// <param name="Reached">The temperature that the scaled heating reaches.</param>
/// <param name="FromOtherAirK">What of the difference is taken to come with other air at all heights, K.</param>
public sealed record TemperatureCheck(
    Temperature Asked, Temperature? EnergyBalance, double HeatFactor, Temperature? Reached, double FromOtherAirK)
{
    private const double WorthSayingOfAirK = 1;

    private const double WorthSayingK = 2;

    /// <summary>How far the temperature asked for lies above the energy balance's.</summary>
    public TemperatureDifference? Disagreement => EnergyBalance is { } own ? Asked - own : null;

    internal static TemperatureCheck? Of(DayFrame frame, DayTrack free, DayTrack track, List<Caution> cautions)
    {
        var assumptions = frame.Assumptions;
        if ((assumptions.MixedTemperature ?? assumptions.MaxTemperature) is not { } asked || frame.FirstStep >= frame.Times.Length)
            return null;
        double Own(DayTrack course) => HeatScale.Reached(frame, course);
        Temperature? Known(double kelvins) => double.IsFinite(kelvins) ? Temperature.FromKelvins(kelvins) : null;
        var check = new TemperatureCheck(asked, Known(Own(free)), track.HeatFactor, Known(Own(track)), track.InflowKelvinsPerHour * HeatScale.HoursToMaximum(frame));
        if (check.Disagreement is { } difference && Math.Abs(difference.Kelvins) >= WorthSayingK)
            cautions.Add(new("temperature-disagreement", Words(check, difference.Kelvins, assumptions.Flux is not null)));
        if (Math.Abs(check.FromOtherAirK) >= WorthSayingOfAirK)
            cautions.Add(new("temperature-other-air", OtherAir(check.FromOtherAirK, track.BeyondSun)));
        if (check.Reached is not { } reached)
            cautions.Add(new("temperature-not-reached", Phrase.Of($"The maximum asked for ({asked.Celsius:0.#} °C) cannot be reached: there is no heating.")));
        else if (Math.Abs((asked - reached).Kelvins) > 0.2)
            cautions.Add(new("temperature-not-reached", Phrase.Of($"The maximum asked for ({asked.Celsius:0.#} °C) cannot be reached by heating this ascent from the ground; the nearest is {reached.Celsius:0.#} °C.")));
        return check;
    }

    private static Phrase OtherAir(double kelvins, bool beyondSun) => (kelvins > 0, beyondSun) switch
    {
        (true, true) => Phrase.Of($"Even the driest ground would not reach this maximum: {kelvins:0.#} K of it must come with warmer air, which makes thermals no deeper, or the maximum is wrong."),
        (true, false) => Phrase.Of($"{kelvins:0.#} K of the difference is taken to come with warmer air at all heights."),
        _ => Phrase.Of($"{-kelvins:0.#} K of the difference is taken to come with colder air at all heights."),
    };

    private static Phrase Words(TemperatureCheck check, double kelvins, bool prescribed)
    {
        var (asked, difference, own, factor) = (check.Asked.Celsius, Math.Abs(kelvins), check.EnergyBalance!.Value.Celsius, check.HeatFactor);
        var side = (kelvins > 0, prescribed) switch
        {
            (true, true) => Phrase.Of($"above what the given fluxes reach"),
            (true, false) => Phrase.Of($"above what sun and ground give"),
            (false, true) => Phrase.Of($"below what the given fluxes reach"),
            (false, false) => Phrase.Of($"below what sun and ground give"),
        };
        return Phrase.Of(
            $"The maximum asked for ({asked:0.#} °C) is {difference:0.#} K {side} ({own:0.#} °C). The heating was multiplied by {factor:0.00} to reach it; check cloud, ground and the forecast.");
    }
}
