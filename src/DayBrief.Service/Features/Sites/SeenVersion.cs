using System.Globalization;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Sites;

/// <summary>The version of a site that was shown with a form: so that of two who change it at once the second is told.</summary>
internal static class SeenVersion
{
    /// <summary>Name of the hidden field.</summary>
    public const string Field = "version";

    public static ProblemError Conflict { get; } = new("Somebody else has changed this site meanwhile. Nothing is kept of what you see; open this page again in another window, compare, and keep it again here to put yours in its place.");

    /// <summary>−1, which no site has, for what is no version.</summary>
    public static int Of(string? typed) =>
        int.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out var version) ? version : -1;
}
