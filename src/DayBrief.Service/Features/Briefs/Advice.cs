namespace DayBrief.Service.Features.Briefs;

/// <summary>What stands on every form of every brief.</summary>
internal static class Advice
{
    public const string Standing =
        "Advice only. Whether and how to fly is for the instructor in charge, local rules and your licence to decide. "
        + "Figures are likely values, not limits. Keep a good look-out, stay within reach of a landing field, and judge the day by what you see.";
}
