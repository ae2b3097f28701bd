using DayBrief.Service.Features.Sending.Deliveries;
using DayBrief.Service.Features.Sites;

namespace DayBrief.Service.Features.Sending.Settings;

/// <summary>What the page of a site's sending shows.</summary>
internal sealed record SendingView(KeptSite Kept, SendingFields Fields, IReadOnlyList<Delivery> Deliveries, bool Mails, bool HasAddress, TestOutcome? Outcome)
{
    public SiteJson Site => Kept.Site;

    public TimeZoneInfo Zone { get; } = Kept.Site.ToSite().TimeZone;

    /// <summary>Where a test can be sent.</summary>
    public IReadOnlyList<Target> Targets { get; } = [.. Target.Of(Kept.Site)];

    public string Path => $"/sites/{Uri.EscapeDataString(Site.Id ?? "")}/sending";
}
