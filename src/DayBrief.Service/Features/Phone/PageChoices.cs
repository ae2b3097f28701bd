using DayBrief.Service.Features.Briefs;

namespace DayBrief.Service.Features.Phone;

/// <summary>Units and light or dark chosen by a link: remembered on the phone for a year.</summary>
internal static class PageChoices
{
    public static void UsePageChoices(this WebApplication app) =>
        app.Use((context, next) =>
        {
            Remember(context, Scheme.Cookie, Scheme.Known(context.Request.Query[Scheme.Parameter].FirstOrDefault()));
            if (FollowedPage.Of(context) is { IsPage: true })
                Remember(context, UnitsChoice.Cookie, UnitsChoice.Known(context.Request.Query[UnitsChoice.Parameter].FirstOrDefault()));
            return next();
        });

    private static void Remember(HttpContext context, string cookie, string? chosen)
    {
        if (chosen is not null)
        {
            context.Response.Cookies.Append(
                cookie, chosen, new() { MaxAge = TimeSpan.FromDays(365), HttpOnly = true, SameSite = SameSiteMode.Lax, IsEssential = true });
        }
    }
}
