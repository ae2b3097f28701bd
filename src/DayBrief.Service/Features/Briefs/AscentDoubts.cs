namespace DayBrief.Service.Features.Briefs;

/// <summary>What every reader must see about the ascent before the day: its time taken on somebody's word or on nobody's, values
/// that hardly occur, what was left out.</summary>
internal static class AscentDoubts
{
    public static IEnumerable<Banner> Of(MadeBrief made, Reader reader)
    {
        var sounding = made.Brief.Ascent.Sounding;
        if (made.Brief.AscentValidAt is null)
            yield return new(reader["The ascent does not say when it was made: it is taken as the air at sunrise, and all times may be wrong."], IsWarning: true);
        if (AscentAnswers.Asked(sounding) is { Count: > 0 } asked)
        {
            yield return new(
                $"{string.Join(" ", asked.Select(remark => reader.Say(remark.Words)))} {(made.Inputs.AscentConfirmed ? reader["The instructor has looked at it: it stands."] : reader["Nobody has looked at it yet."])}",
                IsWarning: true);
        }

        var leftOut = sounding.Remarks.Where(remark => remark.LeavesOut).ToArray();
        if (leftOut.Length == 1)
            yield return new(reader.Say($"Left out of the ascent: {reader.Say(leftOut[0].Words)}"), IsWarning: true);
        else if (leftOut.Length > 1)
            yield return new(reader.Say($"Left out of the ascent, at {leftOut.Length} places: {reader.Say(leftOut[0].Words)} The others stand below, with the ascent."), IsWarning: true);
    }
}
