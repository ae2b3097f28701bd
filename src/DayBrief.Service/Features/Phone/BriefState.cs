using System.Globalization;
using System.Text;
using System.Text.Json;
using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Phone;

/// <summary>What a page shows as a short text: another text, and its readers must get it anew.</summary>
/// <remarks>Such as <c>3f0c9a51aa.r2.20260521</c>: brief, what holds of it, the field's calendar day (for "not for today"),
/// <c>.withdrawn</c>, and <c>.replaced</c> with what holds instead. The phone's worker reads the first part as the id and a <c>d</c> in the second as a draft.</remarks>
internal static class BriefState
{
    /// <summary>There is nothing to show yet.</summary>
    public const string None = "none";

    public static string Of(MadeBrief? made, DateTimeOffset now) => made is null
        ? None
        : made.Inputs.Demonstration
            ? $"{made.Id}.invented"
            : string.Create(CultureInfo.InvariantCulture, $"{made.Id}.{Holding(made)}.{Today(made, now):yyyyMMdd}{(made.Standing?.Withdrawal is null ? "" : ".withdrawn")}{Replaced(made)}");

    private static string Holding(MadeBrief made) => made.Standing is { Latest: > 0 and var latest }
        ? $"r{latest}"
        : $"d{Revision.HashOf(Encoding.UTF8.GetBytes(JsonSerializer.Serialize(made.Inputs, Json.Line)))[..8]}";

    private static string Replaced(MadeBrief made) => made.Standing?.ReplacedBy is { } head ? $".replaced.{head.RevisionId}" : "";

    private static DateTime Today(MadeBrief made, DateTimeOffset now) => TimeZoneInfo.ConvertTime(now, made.Brief.Site.TimeZone).Date;
}
