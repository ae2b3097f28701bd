using System.Text.RegularExpressions;
using DayBrief.Service.Infrastructure;
using DayBrief.Soundings;

namespace DayBrief.Service.Features.Desk;

/// <summary>Brings an error of the ascent to the cell it was typed into, or to the pasted text.</summary>
internal static partial class AscentCell
{
    /// <summary>A cell shows its place itself; in pasted text the words name it.</summary>
    public static ProblemError Of(Refusal refusal)
    {
        var error = ProblemError.Of(refusal);
        var typed = TypedField().Match(error.Field ?? "");
        var field = typed.Success
            ? typed.Groups[2].Value switch
            {
                "pressureHpa" => "p",
                "heightM" => "h",
                "temperatureC" => "t",
                "windDirectionDeg" => "wd",
                "windSpeedKt" => "ws",
                _ => "d",
            }
            + typed.Groups[1].Value
            : "text";
        return error with { Field = field, Words = typed.Success ? refusal.Reason : refusal.Words };
    }

    [GeneratedRegex(@"^levels\[(\d+)\]\.(\w+)$")]
    private static partial Regex TypedField();
}
