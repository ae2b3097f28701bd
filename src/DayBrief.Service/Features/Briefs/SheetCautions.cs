using DayBrief.Days;

namespace DayBrief.Service.Features.Briefs;

/// <summary>Which cautions stand first on the sheet, and how much is said of each.</summary>
internal static class SheetCautions
{
    /// <summary>The worst three and every other serious one, in order.</summary>
    public static IReadOnlyList<RankedCaution> First(Brief brief)
    {
        var ranked = Hazards.Ranked(brief);
        return [.. ranked.Worst, .. ranked.SeriousRest];
    }

    /// <summary>Those that follow, by kind.</summary>
    public static IReadOnlyList<RankedCaution> Others(Brief brief) => [.. Hazards.Ranked(brief).Rest.Where(caution => !caution.IsSerious)];

    /// <summary>The first sentences of a text.</summary>
    public static string Sentences(string text, int most)
    {
        var end = -1;
        for (var i = 0; i < most; i++)
        {
            end = text.IndexOf(". ", end + 1, StringComparison.Ordinal);
            if (end < 0)
                return text;
        }

        return text[..(end + 1)];
    }
}
