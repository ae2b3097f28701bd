using DayBrief.Days;
using DayBrief.Service.Languages;

namespace DayBrief.Service.Features.Technique;

/// <summary>What a pilot is called by.</summary>
internal static class PilotText
{
    public static string Group(Pilot pilot, Language language) => language[pilot.Experience switch
    {
        Experience.BeforeSolo => "Before first solo",
        Experience.LocalSolo => "Local solo",
        Experience.CrossCountry => "Cross-country",
        _ => throw new ArgumentOutOfRangeException(nameof(pilot), pilot.Experience, "An unknown group."),
    }];
}
