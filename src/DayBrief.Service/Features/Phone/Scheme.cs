using DayBrief.Service.Languages;

namespace DayBrief.Service.Features.Phone;

/// <summary>Light or dark: as the phone has it, unless the reader chose one here.</summary>
/// <remarks>The choice is a class on the page's root that the server writes, so that no page flashes in the other one.</remarks>
internal static class Scheme
{
    public const string Parameter = "scheme";

    public const string Cookie = "daybrief-scheme";

    private const string DarkPaper = "#14171a";

    /// <summary>What the phone itself is set to.</summary>
    public const string AsThePhone = "phone";

    /// <summary>The choices with their texts. The one for sunlight is light with the strongest contrast.</summary>
    public static IReadOnlyList<(string Name, string Text)> All { get; } =
    [
        (AsThePhone, Language.Text("As the phone")),
        ("sunlight", Language.Text("For sunlight")),
        ("dark", Language.Text("Dark")),
    ];

    /// <summary>Asked for in the link, else remembered.</summary>
    public static string Of(HttpRequest? request) =>
        Known(request?.Query[Parameter].FirstOrDefault()) ?? Known(request?.Cookies[Cookie]) ?? AsThePhone;

    /// <summary>The class on the page's root; null for none.</summary>
    public static string? Class(HttpRequest? request) => Of(request) is var chosen && chosen != AsThePhone ? chosen : null;

    /// <summary>The colours for the phone's own frame about the page, as <c>daybrief.css</c> has them.</summary>
    public static IEnumerable<(string Paper, string? Media)> Papers(HttpRequest request) => Of(request) switch
    {
        "dark" => [(DarkPaper, null)],
        "sunlight" => [(ShowManifest.Paper, null)],
        _ => [(ShowManifest.Paper, "(prefers-color-scheme: light)"), (DarkPaper, "(prefers-color-scheme: dark)")],
    };

    public static string? Known(string? name) => All.Any(each => each.Name == name) ? name : null;
}
