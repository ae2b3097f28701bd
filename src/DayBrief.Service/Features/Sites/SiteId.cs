using System.Text;
using System.Text.RegularExpressions;
using DayBrief.Service.Infrastructure;
using DayBrief.Texts;

namespace DayBrief.Service.Features.Sites;

/// <summary>The short name of a site in addresses: small letters, digits and hyphens.</summary>
internal static partial class SiteId
{
    public static readonly Words Rule = "Small letters, digits and hyphens, 1 to 64, such as north-field, and not one of new, export, import.";

    private static readonly string[] Taken = ["new", "export", "import"];

    public static bool IsUsable(string? id) => id is not null && Shape().IsMatch(id) && !Taken.Contains(id);

    /// <exception cref="InvalidInputException">It cannot be used.</exception>
    public static string Check(string? id) =>
        IsUsable(id) ? id! : throw InvalidInputException.Field("site.id", Rule);

    /// <summary>The short name that a name suggests: "Nördliches Feld" gives "noerdliches-feld".</summary>
    public static string Of(string name)
    {
        var plain = new StringBuilder();
        foreach (var letter in name.ToLowerInvariant())
        {
            if (char.IsAsciiLetterOrDigit(letter))
                plain.Append(letter);
            else if (Ascii(letter) is { } written)
                plain.Append(written);
            else if (plain.Length > 0 && plain[^1] != '-')
                plain.Append('-');
        }

        var id = plain.ToString().Trim('-');
        return id.Length > 64 ? id[..64].Trim('-') : id;
    }

    /// <summary>The commonest letters of the languages that the program speaks.</summary>
    private static string? Ascii(char letter) => letter switch
    {
        'ä' => "ae",
        'ö' => "oe",
        'ü' => "ue",
        'ß' => "ss",
        'à' or 'á' or 'â' => "a",
        'ç' => "c",
        'è' or 'é' or 'ê' => "e",
        'ñ' => "n",
        _ => null,
    };

    [GeneratedRegex("^[a-z0-9](?:[a-z0-9-]{0,62}[a-z0-9])?$")]
    private static partial Regex Shape();
}
