using DayBrief.Service.Features.Sending.Deliveries;
using DayBrief.Service.Features.Sites;

namespace DayBrief.Service.Features.Sending.Settings;

/// <summary>What the page of a site's sending shows.</summary>
internal sealed record SendingView(SiteJson Site, SendingFields Fields, IReadOnlyList<Delivery> Deliveries, bool Mails, bool HasAddress)
{
    public TimeZoneInfo Zone { get; } = Site.ToSite().TimeZone;

    public string Path => $"/sites/{Uri.EscapeDataString(Site.Id ?? "")}/sending";
}
