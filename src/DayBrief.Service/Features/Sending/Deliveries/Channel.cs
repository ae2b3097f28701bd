using DayBrief.Service.Features.Sites;

namespace DayBrief.Service.Features.Sending.Deliveries;

internal enum Channel
{
    Mail,
    Webhook,
}

/// <summary>One address of a site that is told everything.</summary>
internal sealed record Target(string SiteId, Channel Channel, string Address)
{
    public static IEnumerable<Target> Of(SiteJson site) =>
        site is { Id: { } id, Sending: { } sending }
            ?
            [
                .. (sending.MailTo ?? []).Distinct().Select(address => new Target(id, Channel.Mail, address)),
                .. (sending.Webhooks ?? []).Select(webhook => webhook.Address).OfType<string>().Distinct().Select(address => new Target(id, Channel.Webhook, address)),
            ]
            : [];
}
