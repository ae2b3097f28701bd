using DayBrief.Service.Features.Sending.Deliveries;
using DayBrief.Service.Features.Sites;

namespace DayBrief.Service.Features.Sending.Settings;

/// <summary>What the page of a site's sending shows.</summary>
internal sealed record SendingView(KeptSite Kept, SendingFields Fields, IReadOnlyList<Delivery> Deliveries, bool Mails, bool HasAddress)
{
    public SiteJson Site => Kept.Site;

    public TimeZoneInfo Zone { get; } = Kept.Site.ToSite().TimeZone;

    public string Path => $"/sites/{Uri.EscapeDataString(Site.Id ?? "")}/sending";
}
