using DayBrief.Service.Features.People;
using DayBrief.Service.Features.Sending.Deliveries;
using DayBrief.Service.Features.Sending.Mail;
using DayBrief.Service.Features.Sending.Webhooks;
using DayBrief.Service.Features.Sites;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.Sending.Settings;

/// <summary>"Send a test" of the page: at once, to one address as it is kept; the page tells how it went.</summary>
internal sealed class SendTest(MailServer mails, WebhookClient webhooks, TimeProvider clock)
{
    internal static void Map(WebApplication app) =>
        app.MapPost($"{ShowSending.Path}/test", HandleAsync).RequireAuthorization(Access.Administrator).RequireForm().ExcludeFromDescription();

    private static async Task<Results<RazorComponentResult<SendingPage>, RazorComponentResult<NotFoundPage>>> HandleAsync(
        string id, HttpContext context, SiteStore sites, SendTest test, AuditLog audit, CancellationToken stopping)
    {
        var form = await context.Request.ReadFormAsync(stopping);
        if (sites.FindKept(id) is not { } kept || Asked(kept.Site, form) is not { } target)
            return NotFoundPage.Result("page [not found]");
        var outcome = await test.RunAsync(kept.Site, target, stopping);
        audit.Write(Who.Of(context), Languages.Language.Text("Sent a test"), id, $"{target.Address}: {outcome.Fault?.ToString() ?? "taken"}");
        return ShowSending.Page(kept, context, outcome: outcome);
    }

    /// <summary>Only what is kept: a form cannot name any address it likes.</summary>
    private static Target? Asked(SiteJson site, IFormCollection form) =>
        Target.Of(site).FirstOrDefault(target => target.Channel.ToString() == form["channel"] && target.Address == form["address"]);

    private async Task<TestOutcome> RunAsync(SiteJson site, Target target, CancellationToken stopping)
    {
        try
        {
            return new(target, target.Channel == Channel.Mail ? await MailAsync(site, target.Address, stopping) : await PostAsync(site, target.Address, stopping));
        }
        catch (SendFailedException failed)
        {
            return new(target, null, failed.Fault, failed.About);
        }
    }

    private async Task<string> MailAsync(SiteJson site, string address, CancellationToken stopping)
    {
        await using var session = new SmtpSession(mails);
        return await session.SendAsync(address, from => Task.FromResult(TestMail.Message(site, from, address, clock.GetUtcNow())), stopping);
    }

    private Task<string> PostAsync(SiteJson site, string address, CancellationToken stopping) =>
        webhooks.TestAsync(site.Sending!.Webhooks!.First(webhook => webhook.Address == address), site, stopping);
}
