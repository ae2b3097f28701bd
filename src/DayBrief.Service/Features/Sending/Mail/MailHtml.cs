using DayBrief.Service.Features.Sending.Notices;
using DayBrief.Service.Languages;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.Logging.Abstractions;

namespace DayBrief.Service.Features.Sending.Mail;

/// <summary>A notice as HTML.</summary>
internal static class MailHtml
{
    public static async Task<string> RenderAsync(NoticeText notice, string? link, string site, Language language)
    {
        await using var services = new ServiceCollection().BuildServiceProvider();
        await using var renderer = new HtmlRenderer(services, NullLoggerFactory.Instance);
        return await renderer.Dispatcher.InvokeAsync(async () =>
        {
            var body = await renderer.RenderComponentAsync<MailBody>(ParameterView.FromDictionary(new Dictionary<string, object?>
            {
                [nameof(MailBody.Notice)] = notice,
                [nameof(MailBody.Link)] = link,
                [nameof(MailBody.Site)] = site,
                [nameof(MailBody.In)] = language,
            }));
            return body.ToHtmlString();
        });
    }
}
