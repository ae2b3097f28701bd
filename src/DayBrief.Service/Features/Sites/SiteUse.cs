namespace DayBrief.Service.Features.Sites;

/// <summary>Whether briefs have been made for a site; briefs tell it, since sites know nothing of them.</summary>
/// <param name="HasBriefs">By the site's id.</param>
internal sealed record SiteUse(Func<string, bool> HasBriefs);
