using DayBrief.Service.Infrastructure;
using DayBrief.Service.Languages;
using DayBrief.Texts;

namespace DayBrief.Service.Features.Sites;

/// <summary>What is wrong with a field of a site's page, in the reader's language and the units typed in; programs get those
/// of the outside contract.</summary>
internal static class SiteErrorText
{
    public static string Of(ProblemError error, SiteFields fields, Language language) =>
        error.Words is { Figures: [double least, double most, ..], Format: ['N', 'e', 'e', 'd', 's', ..] } && Shown(error.Field, fields.Typed) is { } shown
            ? language.Say(Words.Of($"Needs a number from {shown(least)} to {shown(most)}."))
            : language.Say(error.Words);

    /// <summary>How a bound is written in the field's unit; null where it is the contract's.</summary>
    private static Func<double, string>? Shown(string? field, SiteUnitsTyped typed) => field switch
    {
        "elevation" or "usableDepth" or "ceiling" => value => $"{typed.Height(value)} {typed.HeightUnit}",
        ['c', 'i', 'r', 'c', 'l', 'i', 'n', 'g', ..] or "lowBelow" or "leastCeiling" => value => $"{typed.Height(value)} {typed.HeightUnit}",
        ['b', 'a', 'n', 'k', ..] => value => $"{value:0}°",
        "lowMargin" => value => $"{value:0} %",
        "leastVisibility" => value => $"{value / 1000:0} km",
        "sinking" => value => $"{value * SiteLimitFields.SinkingUnits:0}·10⁻⁶/s",
        "cooling" => value => $"{value:0} °C/h",
        "usableClimb" => value => $"{typed.Ms(value)} {typed.ClimbUnit}",
        ['l', 'i', 'm', 'i', 't', ..] => value => $"{typed.Knots(value)} {typed.SpeedUnit}",
        _ => null,
    };
}
