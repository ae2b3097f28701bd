using DayBrief.Service.Features.Sending.Deliveries;
using DayBrief.Service.Languages;

namespace DayBrief.Service.Features.Sending.Settings;

/// <summary>A delivery in words.</summary>
internal static class DeliveryText
{
    public static string What(Delivery delivery, Language language) => delivery.WithdrawnAt is null
        ? language.Say($"{language.Date(delivery.Date)}, revision {delivery.Number}")
        : language.Say($"{language.Date(delivery.Date)}, withdrawal");

    public static string Where(Delivery delivery, Language language) => delivery.Target.Channel == Channel.Mail
        ? language.Say($"by mail to {delivery.Target.Address}")
        : language.Say($"by webhook to {delivery.Target.Address}");

    public static string State(Delivery delivery, TimeZoneInfo zone, Language language)
    {
        string Time(DateTimeOffset at) => language.DateAndTime(TimeZoneInfo.ConvertTime(at, zone));
        var why = delivery.Fault is { } fault ? $" {SendFaultText.Of(fault, delivery.About, language)}" : "";
        return delivery.State switch
        {
            DeliveryState.Sent when delivery.LastAt is { } at => language.Say($"Taken {Time(at)}."),
            DeliveryState.Waiting when delivery.Attempts > 0 => language.Say($"Attempt {delivery.Attempts} of {RetryPauses.MostAttempts} failed; next {Time(delivery.NextAt)}.") + why,
            DeliveryState.Waiting => language["Waits to be sent."],
            DeliveryState.Overtaken => language["Not sent: a later one was due before it could be."] + why,
            _ => language.Say($"Given up after attempt {delivery.Attempts}.") + why,
        };
    }
}
