using DayBrief.Service.Features.Sending.Webhooks;
using DayBrief.Service.Features.Sites;

namespace DayBrief.Service.Features.Sending.Settings;

/// <summary>The form as it was typed: one address a line. A webhook that stays keeps its secret, a new one gets one.</summary>
internal sealed record SendingFields(string MailTo, string Webhooks, bool Feed, bool Calendar)
{
    public static SendingFields Of(SiteSendingJson? sending) => new(
        string.Join('\n', sending?.MailTo ?? []),
        string.Join('\n', (sending?.Webhooks ?? []).Select(webhook => webhook.Address)),
        sending?.Feed ?? false,
        sending?.Calendar ?? false);

    public static SendingFields Of(IFormCollection form) =>
        new(form["mailTo"].ToString(), form["webhooks"].ToString(), form.ContainsKey("feed"), form.ContainsKey("calendar"));

    public SiteSendingJson ToSending(SiteSendingJson? before) => new()
    {
        MailTo = [.. Lines(MailTo)],
        Webhooks = [.. Lines(Webhooks).Select(address => new WebhookJson(address, SecretOf(address, before)))],
        Feed = Feed,
        Calendar = Calendar,
    };

    private static string SecretOf(string address, SiteSendingJson? before) =>
        before?.Webhooks?.FirstOrDefault(webhook => webhook.Address == address)?.Secret ?? WebhookSignature.NewSecret();

    private static IEnumerable<string> Lines(string text) =>
        text.Split(['\r', '\n'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Distinct(StringComparer.Ordinal);
}
