using System.Globalization;
using System.Text.RegularExpressions;
using DayBrief.Texts;

namespace DayBrief.Service.Features.Sites;

/// <summary>An HTTP address with places for date, hour and station, such as
/// <c>https://example.org/{yyyy}/{MM}/{dd}/{HH}/{station}.txt</c>; date and hour are UTC.</summary>
internal static partial class AddressTemplate
{
    private const int Longest = 2000;

    private static readonly string[] Known = ["yyyy", "yy", "MM", "dd", "HH", "mm", "station"];

    /// <summary>What is wrong with it, null when it can be used.</summary>
    public static Words? Fault(string template)
    {
        if (template.Length > Longest)
            return "The address is longer than 2000 characters.";
        if (Place().Matches(template).Any(place => !Known.Contains(place.Groups[1].Value)))
            return "In braces stand only {yyyy}, {yy}, {MM}, {dd}, {HH}, {mm} and {station}.";
        if (Expand(template, DateTimeOffset.UnixEpoch, "00000") is not { } address)
            return "The address must begin with http:// or https://.";
        return address.UserInfo.Length > 0 ? Words.Of("The address must not hold a user name or password.") : null;
    }

    /// <summary>The address for a moment; null when it is none of http or https.</summary>
    public static Uri? Expand(string template, DateTimeOffset at, string? station) =>
        Uri.TryCreate(Place().Replace(template, place => Value(place.Groups[1].Value, at.ToUniversalTime(), station)), UriKind.Absolute, out var address)
        && (address.Scheme == Uri.UriSchemeHttp || address.Scheme == Uri.UriSchemeHttps)
            ? address
            : null;

    private static string Value(string name, DateTimeOffset at, string? station) =>
        name == "station" ? Uri.EscapeDataString(station ?? "") : at.ToString(name == "yy" ? "yy" : name, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"\{([^{}]*)\}")]
    private static partial Regex Place();
}
