using System.Globalization;
using System.Text.RegularExpressions;

namespace DayBrief.Reports;

/// <summary>Reads a visibility in metres, kilometres or statute miles.</summary>
/// <remarks>[WMO306] FM 15, 15.6; [FAA28] chapter 24 for statute miles and their fractions. 1 statute mile is 1,609.344 m [SI].</remarks>
internal static class VisibilityGroup
{
    private const double MetresPerMile = 1609.344;

    /// <summary>Null if the group is none, and whether it holds in some direction only.</summary>
    public static (Visibility Seen, bool InDirection)? Read(string group)
    {
        if (GroupShapes.Metres().Match(group) is { Success: true } metres)
        {
            var seen = Number(metres.Groups[1]) switch
            {
                9999 => new Visibility(10_000, IsOrMore: true),
                var value => new Visibility(value),
            };
            return (seen, IsDirection(metres.Groups[2]));
        }

        if (GroupShapes.Kilometres().Match(group) is { Success: true } kilometres)
        {
            return (new(1000 * Number(kilometres.Groups[1])), IsDirection(kilometres.Groups[2]));
        }

        return Miles(group) is { } miles ? (miles, false) : null;
    }

    private static Visibility? Miles(string group)
    {
        var parts = group.Split(' ');
        if (GroupShapes.Miles().Match(parts[^1]) is not { Success: true } match)
        {
            return null;
        }

        var (whole, sign) = parts.Length == 2 ? (Number(parts[0].TrimStart('P', 'M')), parts[0][..1]) : (0, match.Groups[1].Value);
        var miles = whole + Fraction(match);
        return double.IsFinite(miles) && miles < 100 ? new(miles * MetresPerMile, sign == "P", sign == "M") : null;
    }

    // Reported fractions are halves to sixteenths of less than one. A greater one is a whole number glued to a fraction.
    private static double Fraction(Match match)
    {
        var upper = Number(match.Groups[2]);
        if (!match.Groups[3].Success)
        {
            return match.Groups[2].Length < 3 ? upper : double.NaN;
        }

        var lower = Number(match.Groups[3]);
        if (upper < lower)
        {
            return upper / lower;
        }

        var figures = match.Groups[2].Value;
        var glued = lower == 16 && figures.Length == 3 ? 2 : 1;
        var rest = figures.Length > 1 ? Number(figures[^glued..]) : 0;
        return lower is 2 or 4 or 8 or 16 && rest > 0 && rest < lower && rest % 2 == 1 ? Number(figures[..^glued]) + (rest / lower) : double.NaN;
    }

    private static bool IsDirection(Group group) => group.Length > 0 && group.Value != "NDV";

    private static double Number(Group group) => Number(group.Value);

    private static double Number(string figures) => double.Parse(figures, NumberStyles.None, CultureInfo.InvariantCulture);
}
