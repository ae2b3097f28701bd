using DayBrief.Service.Infrastructure;
using DayBrief.Service.Languages;

namespace DayBrief.Service.Features.Sites;

/// <summary>What the page of all sites shows.</summary>
/// <param name="In">The reader's language.</param>
/// <param name="Sites">The sites.</param>
/// <param name="Plan">What a file would change; null when none was sent.</param>
/// <param name="Errors">Why a file cannot be read.</param>
/// <param name="Applied">A file has just been taken.</param>
internal sealed record SiteListView(
    Language In, IReadOnlyList<SiteJson> Sites, ImportPlan? Plan, IReadOnlyList<ProblemError> Errors, bool Applied);
