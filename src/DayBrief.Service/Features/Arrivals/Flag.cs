using DayBrief.Days;

namespace DayBrief.Service.Features.Arrivals;

/// <summary>The day of a site goes otherwise than its brief says.</summary>
/// <param name="SiteId">The site.</param>
/// <param name="Date">Its local day.</param>
/// <param name="BriefId">The brief that was compared.</param>
/// <param name="RaisedAt">When it was noticed first.</param>
/// <param name="Deviation">What, in figures; worded by <see cref="FlagText"/>.</param>
internal sealed record Flag(string SiteId, DateOnly Date, string BriefId, DateTimeOffset RaisedAt, Deviation Deviation);
