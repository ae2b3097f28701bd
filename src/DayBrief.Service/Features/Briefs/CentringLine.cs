using DayBrief.Service.Features.Technique;

namespace DayBrief.Service.Features.Briefs;

/// <summary>How to centre today in one line, to be carried into the air.</summary>
internal static class CentringLine
{
    /// <summary>What the technique of the reader's group says first of centring.</summary>
    public static string Of(TechniqueFacts facts) => TechniqueText.Centre(facts).Skip(facts.Pilot.Experience == Days.Experience.BeforeSolo ? 0 : 1).First();
}
