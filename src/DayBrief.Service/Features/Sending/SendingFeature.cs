using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Features.Sending.Calendar;
using DayBrief.Service.Features.Sending.Deliveries;
using DayBrief.Service.Features.Sending.Feed;
using DayBrief.Service.Features.Sending.Mail;
using DayBrief.Service.Features.Sending.Notices;
using DayBrief.Service.Features.Sending.Settings;
using DayBrief.Service.Features.Sending.Webhooks;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Sending;

/// <summary>What was signed, sent out: mail, webhook, feed, calendar. Each off until a site switches it on.</summary>
internal static class SendingFeature
{
    public static void AddSending(this IServiceCollection services, IConfiguration configuration)
    {
        services.AddSingleton(new PublicAddress(configuration));
        services.AddSingleton(new MailServer(configuration));
        services.AddSingleton(new WebhookLimits());
        services.AddSingleton<Installation>();
        services.AddSingleton<NoticeStore>();
        services.AddSingleton<TargetStore>();
        services.AddSingleton<DeliveryLedger>();
        services.AddSingleton<PlanDeliveries>();
        services.AddSingleton<NoticeMail>();
        services.AddSingleton<WebhookClient>();
        services.AddSingleton<AttemptDelivery>();
        services.AddSingleton<SendOut>();
        services.AddSingleton<SendTest>();
        services.AddSingleton<FeedEntryStore>();
        services.AddSingleton<DayCalendar>();
        services.AddSingleton<IFollow, FollowBySending>();
        services.AddHostedService<StartSending>();
    }

    public static void MapSending(this WebApplication app)
    {
        ShowFeed.Map(app);
        ShowCalendar.Map(app);
        ShowSending.Map(app);
        KeepSending.Map(app);
        SendAgain.Map(app);
        SendTest.Map(app);
    }
}
