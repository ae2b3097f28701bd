namespace DayBrief.Service.Features.Briefs;

/// <summary>What stands on every form of every brief; said in the reader's language.</summary>
internal static class Advice
{
    public static readonly string Standing = Languages.Language.Text(
        "Advice only. Whether and how to fly is for the instructor in charge, local rules and your licence to decide. Figures are likely values, not limits. Keep a good look-out, stay within reach of a landing field, and judge the day by what you see.");
}
