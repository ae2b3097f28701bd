using System.Globalization;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Sites;

/// <summary>Reads the figures of a site's page. A figure that still stands as it was shown keeps its exact value, so that
/// opening and saving a page changes nothing.</summary>
internal sealed class TypedNumbers(SiteFields fields, SiteFields before, FieldErrors errors)
{
    public double? Plain(string field) => Parse(field);

    /// <param name="field">The field.</param>
    /// <param name="exact">What the shown figure stood for; null where it is a default.</param>
    /// <param name="convert">From what is typed to what is kept.</param>
    public double? Of(string field, double? exact, Func<double, double> convert) =>
        before[field].Length > 0 && fields[field] == before[field] && fields["typedIn"] == before["typedIn"]
            ? exact
            : Parse(field) is { } typed ? convert(typed) : null;

    private double? Parse(string field)
    {
        var text = fields[field].Replace(',', '.').Replace('−', '-');
        if (text.Length == 0)
            return null;
        if (double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value))
            return value;
        errors.Add(field, $"\"{fields[field]}\" is not a number.");
        return null;
    }
}
