namespace DayBrief.Service.Features.Arrivals;

/// <summary>An ascent that came by itself.</summary>
/// <param name="SiteId">The site it was fetched for.</param>
/// <param name="SoundingId">Where the ascents keep it.</param>
/// <param name="ArrivedAt">When it came first.</param>
/// <param name="ValidAt">When it is valid; null when it does not say.</param>
/// <param name="Station">Its station; null when it does not say.</param>
/// <param name="Origin">The host or the file it came from.</param>
internal sealed record ArrivedSounding(
    string SiteId, string SoundingId, DateTimeOffset ArrivedAt, DateTimeOffset? ValidAt, string? Station, string Origin);
