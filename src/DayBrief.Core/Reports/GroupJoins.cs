using System.Text.RegularExpressions;

namespace DayBrief.Reports;

/// <summary>Joins what was written in two words and means one group: "1 1/2SM", "FM 1130", "PROB 30", "SCT 030", "SCT030 CB".</summary>
internal static partial class GroupJoins
{
    /// <summary>Remarks stay as they are written.</summary>
    public static List<string> Of(IEnumerable<string> groups)
    {
        var joined = new List<string>();
        var inRemarks = false;
        foreach (var group in groups)
        {
            inRemarks |= group.StartsWith("RMK", StringComparison.Ordinal);
            if (!inRemarks && joined.Count > 0 && Pair().IsMatch($"{joined[^1]} {group}"))
            {
                joined[^1] = joined[^1] is [>= '0' and <= '9'] or ['P' or 'M', >= '0' and <= '9'] && group.EndsWith("SM", StringComparison.Ordinal) && group.Contains('/', StringComparison.Ordinal)
                    ? $"{joined[^1]} {group}"
                    : joined[^1] + group;
            }
            else
            {
                joined.Add(group);
            }
        }

        return joined;
    }

    [GeneratedRegex(@"^(?:P?[0-9] [0-9]{1,2}/[0-9]{1,2}SM|[PM]?[0-9]{1,2}(?:/[0-9]{1,2})? SM|(?:FM|TL|AT) (?:[0-9]{2})?[0-9]{4}Z?|PROB [0-9]{2}|(?:FEW|SCT|BKN|OVC|VV) [0-9]{3}(?:CB|TCU)?|(?:FEW|SCT|BKN|OVC)[0-9]{3} (?:CB|TCU)|(?:Q|QNH) [0-9]{4}|[0-9]{4,5}(?:G[0-9]{2})? (?:KT|MPS)|T[XN] [M-]?[0-9]{2}/[0-9]{2,4}Z?)$")]
    private static partial Regex Pair();
}
