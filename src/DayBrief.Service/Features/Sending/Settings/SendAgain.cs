using DayBrief.Service.Features.People;
using DayBrief.Service.Features.Sending.Deliveries;
using Hangfire;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.Sending.Settings;

/// <summary>"Send again" of the page: whatever became of a delivery, it is due now.</summary>
internal static class SendAgain
{
    internal static void Map(WebApplication app) =>
        app.MapPost($"{ShowSending.Path}/again", HandleAsync).RequireAuthorization(Access.Administrator).RequireForm().ExcludeFromDescription();

    private static async Task<Results<RedirectHttpResult, RazorComponentResult<NotFoundPage>>> HandleAsync(
        string id, HttpContext context, DeliveryLedger ledger, IBackgroundJobClient jobs, AuditLog audit, TimeProvider clock, CancellationToken stopping)
    {
        var form = await context.Request.ReadFormAsync(stopping);
        if (ledger.Find(form["delivery"].ToString()) is not { } delivery || delivery.Target.SiteId != id)
            return NotFoundPage.Result("page [not found]");
        ledger.Update(delivery with { State = DeliveryState.Waiting, Attempts = 0, NextAt = clock.GetUtcNow(), Fault = null, About = null });
        audit.Write(Who.Of(context), Languages.Language.Text("Sent again"), id, delivery.Target.Address);
        StartSending.Ask(jobs);
        return TypedResults.Redirect($"/sites/{Uri.EscapeDataString(id)}/sending#deliveries");
    }
}
