using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.Sending.Mail;
using DayBrief.Service.Features.Sending.Notices;
using DayBrief.Service.Features.Sending.Webhooks;
using DayBrief.Service.Features.Sites;

namespace DayBrief.Service.Features.Sending.Deliveries;

/// <summary>One attempt at one delivery, and what the ledger says of it.</summary>
internal sealed class AttemptDelivery(
    SiteStore sites, NoticeStore notices, DeliveryLedger ledger, BriefDesk desk, NoticeMail mails, WebhookClient webhooks, TimeProvider clock, ILogger<AttemptDelivery> log)
{
    private static readonly Action<ILogger, Channel, string, SendFault, string?, Exception?> GivenUp = LoggerMessage.Define<Channel, string, SendFault, string?>(
        LogLevel.Warning, new(1, nameof(GivenUp)), "{Channel} of {Delivery} is given up: {Fault} {About}");

    private static readonly Action<ILogger, string, Exception?> Broke =
        LoggerMessage.Define<string>(LogLevel.Error, new(2, nameof(Broke)), "{Delivery} broke");

    /// <remarks>The attempt is counted before it is made: a program that dies in it tries again after the pause, and the other
    /// side may get it twice.</remarks>
    public async Task RunAsync(Delivery delivery, SmtpSession session, CancellationToken stopping)
    {
        var now = clock.GetUtcNow();
        var begun = delivery with { Attempts = delivery.Attempts + 1, LastAt = now, NextAt = now + (RetryPauses.After(delivery.Attempts + 1) ?? TimeSpan.Zero) };
        ledger.Update(begun);
        try
        {
            await SendAsync(delivery, session, stopping);
            ledger.Update(begun with { State = DeliveryState.Sent, LastAt = clock.GetUtcNow(), Fault = null, About = null });
        }
        catch (SendFailedException failed)
        {
            ledger.Update(After(begun, failed));
        }
        catch (Exception broken) when (broken is not OperationCanceledException)
        {
            Broke(log, delivery.Id, broken);
            ledger.Update(After(begun, new(SendFault.Broken, broken.GetType().Name, cause: broken)));
        }
    }

    private async Task SendAsync(Delivery delivery, SmtpSession session, CancellationToken stopping)
    {
        var site = sites.Find(delivery.Target.SiteId);
        if (site is null || !Target.Of(site).Contains(delivery.Target))
            throw new SendFailedException(SendFault.TakenOut, null, mayPass: false);
        // Taken back a second time since: the ledger has that as a later notice.
        if (notices.Find(delivery.BriefId, delivery.Number, delivery.WithdrawnAt) is not { } notice)
            throw new SendFailedException(SendFault.TakenOut, null, mayPass: false);
        var made = desk.Of(notice.Revision);
        if (delivery.Target.Channel == Channel.Mail)
            await session.SendAsync(delivery.Target.Address, from => mails.MessageAsync(notice, made, site, from, delivery.Target.Address), stopping);
        else
            await webhooks.SendAsync(site.Sending!.Webhooks!.First(webhook => webhook.Address == delivery.Target.Address), notice, made, site, stopping);
    }

    private Delivery After(Delivery begun, SendFailedException failed)
    {
        var (told, pause) = (begun with { Fault = failed.Fault, About = failed.About }, RetryPauses.After(begun.Attempts, failed.RetryAfter));
        if (failed.MayPass && pause is { } wait)
            return told with { NextAt = clock.GetUtcNow() + wait };
        GivenUp(log, begun.Target.Channel, begun.Id, failed.Fault, failed.About, null);
        return told with { State = DeliveryState.Failed };
    }
}
