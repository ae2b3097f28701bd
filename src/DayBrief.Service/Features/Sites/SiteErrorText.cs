using System.Globalization;
using System.Text.RegularExpressions;
using DayBrief.Service.Infrastructure;
using DayBrief.Service.Languages;

namespace DayBrief.Service.Features.Sites;

/// <summary>What is wrong with a field of a site's page, in the reader's language and the units typed in; programs get the
/// English of the outside contract.</summary>
internal static partial class SiteErrorText
{
    public static string Of(ProblemError error, SiteFields fields, Language language)
    {
        var range = Range().Match(error.Detail);
        if (range.Success)
            return language.Say($"Needs a number from {Bound(range.Groups[1].Value, error.Field, fields)} to {Bound(range.Groups[2].Value, error.Field, fields)}.");
        var zone = Zone().Match(error.Detail);
        return zone.Success ? language.Say($"No such time zone; {zone.Groups[1].Value}?") : language[error.Detail];
    }

    private static string Bound(string bound, string? field, SiteFields fields)
    {
        var value = double.Parse(bound, CultureInfo.InvariantCulture);
        return field switch
        {
            "elevation" or "usableDepth" or "ceiling" => $"{fields.Typed.Height(value)} {fields.Typed.HeightUnit}",
            "usableClimb" => $"{fields.Typed.Ms(value)} {fields.Typed.SpeedUnit}",
            ['l', 'i', 'm', 'i', 't', ..] => $"{fields.Typed.Knots(value)} {fields.Typed.SpeedUnit}",
            _ => bound,
        };
    }

    [GeneratedRegex(@"^\S+ (?:must be|is required: a number) from (-?[\d.]+) to (-?[\d.]+)[;.]")]
    private static partial Regex Range();

    [GeneratedRegex(@"^timeZone .*IANA name such as (.+)\.$")]
    private static partial Regex Zone();
}
