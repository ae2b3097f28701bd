using DayBrief.Service.Features.Briefs;

namespace DayBrief.Service.Features.Phone;

/// <summary>A page whose readers are told when it changes and which their phones may keep: today's, a field's, a brief's; and
/// the sheets of a brief.</summary>
/// <param name="Root">Where its <c>/events</c> and <c>/state</c> are.</param>
/// <param name="Made">What it shows; null while there is nothing.</param>
/// <param name="State">What it shows, as <see cref="BriefState"/> says it.</param>
/// <param name="IsPage">Not one of the sheets.</param>
internal sealed record FollowedPage(string Root, MadeBrief? Made, string State, bool IsPage)
{
    private const string Brief = "/briefs/{id}";

    /// <summary>Nobody but its author asked for a draft by its address: phones keep only what is meant for readers.</summary>
    public bool MayBeKept => Made is { Inputs.Demonstration: true } or { Standing.Revision: not null } || (Made is not null && !Root.StartsWith("/briefs/", StringComparison.Ordinal));

    /// <summary>The page that a request asks for, the same each time for one request; null for any other.</summary>
    public static FollowedPage? Of(HttpContext? context)
    {
        if (context is null || !HttpMethods.IsGet(context.Request.Method))
            return null;
        if (!context.Items.TryGetValue(typeof(FollowedPage), out var known))
            context.Items[typeof(FollowedPage)] = known = Find(context);
        return (FollowedPage?)known;
    }

    private static FollowedPage? Find(HttpContext context)
    {
        var services = context.RequestServices;
        var (current, desk) = (services.GetRequiredService<CurrentBrief>(), services.GetRequiredService<BriefDesk>());
        return (context.GetEndpoint() as RouteEndpoint)?.RoutePattern.RawText switch
        {
            "/" => Page("", Asked(() => current.For(null, context))),
            "/fields/{site}" when Value("site") is var site => Page($"/fields/{Uri.EscapeDataString(site)}", Asked(() => current.For(site, context))),
            Brief when Asked(() => desk.Find(Value("id"))) is { } made => Page($"/briefs/{made.Id}", made),
            Brief + "/revisions/{number:int}" when desk.Find(Value("id")) is { } made => Page($"/briefs/{made.Id}", made),
            Brief + "/sheet.pdf" or Brief + "/technique.pdf" when desk.Find(Value("id")) is { } made => Page($"/briefs/{made.Id}", made) with { IsPage = false },
            _ => null,
        };

        MadeBrief? Asked(Func<MadeBrief?> find) => AskedBrief.Of(context, find);
        string Value(string name) => context.GetRouteValue(name)?.ToString() ?? "";
        FollowedPage Page(string root, MadeBrief? made) => new(root, made, BriefState.Of(made, desk.Now), IsPage: true);
    }
}
