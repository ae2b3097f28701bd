using DayBrief.Service.Languages;

namespace DayBrief.Service.Features.Sites;

/// <summary>Names of the choices on a site's page, as texts.</summary>
internal static class SiteChoices
{
    private static readonly HashSet<string> Known =
    [
        Language.Text("grass"), Language.Text("crops"), Language.Text("bare soil"), Language.Text("woodland"), Language.Text("town"),
        Language.Text("scrub"), Language.Text("marsh"), Language.Text("snow"), Language.Text("normal"), Language.Text("dry"),
        Language.Text("wet"), Language.Text("soaked"), Language.Text("flat"), Language.Text("hills"), Language.Text("mountains"),
        Language.Text("winch"), Language.Text("aerotow"), Language.Text("car tow"), Language.Text("self launch"),
        Language.Text("bungee"), Language.Text("feet and knots"), Language.Text("metric"),
    ];

    public static string Of(string name, Language language) =>
        name.Replace('-', ' ') is var words && Known.Contains(words) ? language[words] : words;
}
