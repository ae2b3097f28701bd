using DayBrief.Service.Features.People;
using DayBrief.Service.Features.Sending.Deliveries;
using DayBrief.Service.Features.Sending.Mail;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Infrastructure;
using DayBrief.Service.Languages;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.Sending.Settings;

/// <summary>To whom a site sends, and how it went: for administrators.</summary>
internal static class ShowSending
{
    internal const string Path = "/sites/{id}/sending";
    private const int Most = 60;

    internal static void Map(WebApplication app) =>
        app.MapGet(Path, Handle).RequireAuthorization(Access.Administrator).ExcludeFromDescription();

    internal static RazorComponentResult<SendingPage> Page(
        KeptSite kept,
        HttpContext context,
        SendingFields? typed = null,
        IReadOnlyList<ProblemError>? refused = null,
        int status = StatusCodes.Status200OK,
        TestOutcome? outcome = null)
    {
        var services = context.RequestServices;
        var view = new SendingView(
            kept,
            typed ?? SendingFields.Of(kept.Site.Sending),
            services.GetRequiredService<DeliveryLedger>().Latest(kept.Site.Id!, Most),
            services.GetRequiredService<MailServer>().Host is not null,
            services.GetRequiredService<PublicAddress>().Link("/") is not null,
            outcome);
        return new(new Dictionary<string, object?>
        {
            [nameof(SendingPage.View)] = view,
            [nameof(SendingPage.In)] = Language.Of(context.Request),
            [nameof(SendingPage.Refused)] = refused,
            [nameof(SendingPage.IsKept)] = context.Request.Query.ContainsKey("kept"),
        })
        {
            StatusCode = status,
        };
    }

    private static Results<RazorComponentResult<SendingPage>, RazorComponentResult<NotFoundPage>> Handle(string id, HttpContext context, SiteStore sites) =>
        sites.FindKept(id) is { } kept ? Page(kept, context) : NotFoundPage.Result("page [not found]");
}
