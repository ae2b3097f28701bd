using DayBrief.Service.Features.Sending.Mail;
using Hangfire;

namespace DayBrief.Service.Features.Sending.Deliveries;

/// <summary>Sends what is due. Run by the clock and whenever something is signed; two at once wait for each other.</summary>
internal sealed class SendOut(
    PlanDeliveries plan, DeliveryLedger ledger, MailServer mail, AttemptDelivery attempt, TimeProvider clock) : IDisposable
{
    private const int AtOnce = 4;

    private readonly SemaphoreSlim _one = new(1);

    [AutomaticRetry(Attempts = 0)]
    public async Task RunAsync(CancellationToken stopping)
    {
        await _one.WaitAsync(stopping);
        try
        {
            plan.Run();
            // All mails go through one server, in turn over one connection; each webhook is a server of its own.
            var queues = ledger.Waiting().GroupBy(delivery => delivery.Target is { Channel: Channel.Webhook } target ? target.Address : "");
            await Parallel.ForEachAsync(
                queues,
                new ParallelOptions { MaxDegreeOfParallelism = AtOnce, CancellationToken = stopping },
                async (queue, token) => await InTurnAsync([.. queue], token));
        }
        finally
        {
            _one.Release();
        }
    }

    public void Dispose() => _one.Dispose();

    private async Task InTurnAsync(Delivery[] queue, CancellationToken stopping)
    {
        await using var session = new SmtpSession(mail);
        foreach (var delivery in queue)
        {
            if (delivery.Attempts > 0 && Array.Exists(queue, later => IsLater(later, delivery)))
                ledger.Update(delivery with { State = DeliveryState.Overtaken });
            else if (delivery.NextAt <= clock.GetUtcNow())
                await attempt.RunAsync(delivery, session, stopping);
        }
    }

    private static bool IsLater(Delivery other, Delivery delivery) =>
        other.Target == delivery.Target && other.BriefId == delivery.BriefId && other.NoticeAt > delivery.NoticeAt;
}
