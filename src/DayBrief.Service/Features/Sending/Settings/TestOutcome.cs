using DayBrief.Service.Features.Sending.Deliveries;
using DayBrief.Service.Languages;

namespace DayBrief.Service.Features.Sending.Settings;

/// <summary>How a test went: what the other side said, or why it was not taken.</summary>
internal sealed record TestOutcome(Target Target, string? Answer, SendFault? Fault = null, string? About = null)
{
    public string Sentence(Language language) => Fault is { } fault
        ? $"{language.Say($"The test to {Target.Address} failed.")} {SendFaultText.Of(fault, About, language)}"
        : $"{language.Say($"The test to {Target.Address} was taken.")} {language.Say($"The other side answered: {Answer}")}";
}
