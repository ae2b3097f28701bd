using DayBrief.Days;
using DayBrief.Service.Languages;

namespace DayBrief.Service.Features.Arrivals;

/// <summary>Flags in words, with times of the site.</summary>
internal static class FlagText
{
    public static string Of(Deviation flag, TimeZoneInfo zone, Language language)
    {
        var at = TimeZoneInfo.ConvertTime(flag.At, zone);
        return flag.Kind switch
        {
            DeviationKind.TriggerEarly when flag.Minutes is null =>
                language.Say($"{flag.Observed:0} °C at {at:HH:mm}: trigger reached, which was not expected today."),
            DeviationKind.TriggerEarly => language.Say($"{flag.Observed:0} °C at {at:HH:mm}, trigger reached {flag.Minutes:0} min early."),
            DeviationKind.TriggerLate => language.Say($"{flag.Observed:0} °C at {at:HH:mm}, trigger reached {flag.Minutes:0} min late."),
            DeviationKind.TriggerNotYet => language.Say(
                $"{flag.Observed:0} °C at {at:HH:mm}: the trigger of {flag.Expected:0.0} °C is not reached {flag.Minutes:0} min after its computed time."),
            DeviationKind.Warmer => language.Say($"{flag.Observed:0} °C at {at:HH:mm}, {flag.Observed - flag.Expected:0.0} °C warmer than computed."),
            DeviationKind.Colder => language.Say($"{flag.Observed:0} °C at {at:HH:mm}, {flag.Expected - flag.Observed:0.0} °C colder than computed."),
            DeviationKind.WindOverLimit => language.Say($"Wind {flag.Observed:0} kt at {at:HH:mm}, over the limit of {flag.Expected:0} kt."),
            DeviationKind.GustOverLimit => language.Say($"Gusts {flag.Observed:0} kt at {at:HH:mm}, over the limit of {flag.Expected:0} kt."),
            DeviationKind.Thunder => language.Say($"Thunder reported at {at:HH:mm} ({flag.Group})."),
            DeviationKind.ThunderForecast => language.Say($"The newer forecast has thunder: {flag.Group}."),
            DeviationKind.Qnh => language.Say($"QNH {flag.Observed:0} hPa at {at:HH:mm}, before {flag.Expected:0} hPa."),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }
}
