using DayBrief.Days;
using DayBrief.Units;

namespace DayBrief.Service.Features.Briefs;

/// <summary>Words for a limit that is passed: the site's own, or the usual one where it sets none, which is then said.</summary>
internal static class LimitText
{
    /// <summary>"limit 20 kt", or "limit not set".</summary>
    public static string Short(Hazard hazard, Reader reader, Func<double, string> figure) =>
        hazard.Passed is [{ IsSet: true } limit, ..] ? reader.Say($"limit {figure(limit.Limit)}") : reader["limit not set"];

    /// <summary>A limit of the wind.</summary>
    public static string Figure(double metresPerSecond, Reader reader) => reader.WindLimit(Speed.FromMetresPerSecond(metresPerSecond));

    /// <summary>Above the limit of a wind.</summary>
    public static string Above(Hazard hazard, Reader reader)
    {
        var limit = hazard.Passed is [var passed, ..] ? Figure(passed.Limit, reader) : reader["not known"];
        return hazard.Passed is [{ IsSet: true }, ..] ? reader.Say($"above the site's limit of {limit}") : NotSet(hazard, reader, limit);
    }

    /// <summary>Below the least of sight or cloud.</summary>
    public static string Below(Hazard hazard, Reader reader, Func<double, string> figure) => hazard.Passed switch
    {
        [{ IsSet: true } limit, ..] => reader.Say($"below the site's least of {figure(limit.Limit)}"),
        [var usual, ..] => reader.Say($"below {figure(usual.Limit)}, the usual least (limit not set by the site; common practice)"),
        _ => reader["limit not set"],
    };

    public static string NotSet(Hazard hazard, Reader reader, string usual) =>
        reader.Say($"above {usual}, the usual limit (limit not set by the site; common practice)");
}
