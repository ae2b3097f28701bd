using DayBrief.Service.Infrastructure;
using DayBrief.Service.Languages;

namespace DayBrief.Service.Features.Sites;

/// <summary>What the page of a site shows.</summary>
/// <param name="In">The reader's language.</param>
/// <param name="Fields">What stands in the fields.</param>
/// <param name="Kept">The site as it is kept; null for a new one.</param>
/// <param name="Errors">What is wrong.</param>
/// <param name="JustKept">It has just been kept.</param>
internal sealed record SitePageView(
    Language In, SiteFields Fields, KeptSite? Kept, IReadOnlyList<ProblemError> Errors, bool JustKept);
