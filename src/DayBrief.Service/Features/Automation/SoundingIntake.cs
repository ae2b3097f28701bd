using DayBrief.Service.Features.Arrivals;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Features.Soundings;
using DayBrief.Soundings;

namespace DayBrief.Service.Features.Automation;

/// <summary>Keeps an ascent that came by itself, if it can be used.</summary>
internal sealed class SoundingIntake(SoundingStore soundings, ArrivalStore arrivals, TimeProvider clock)
{
    /// <returns>The arrival, and whether it is new to the site.</returns>
    /// <exception cref="InvalidSoundingException">The content is no usable ascent; nothing is kept.</exception>
    public (ArrivedSounding Arrived, bool IsNew) Take(SiteJson site, DateOnly date, byte[] content, string name, string origin)
    {
        var id = soundings.Keep(content, name, fetched: true);
        var source = soundings.Choose(id, null, site.ToSite(), date)!.Source;
        var arrived = new ArrivedSounding(
            site.Id!, id, clock.GetUtcNow(), source.ValidAt ?? source.DayAndHour?.LatestUpTo(date), source.Station, origin);
        return (arrived, arrivals.Add(arrived));
    }
}
