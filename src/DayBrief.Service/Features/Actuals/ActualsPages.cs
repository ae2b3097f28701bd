using System.Globalization;
using DayBrief.Service.Features.Arrivals;
using DayBrief.Service.Features.People;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Infrastructure;
using DayBrief.Service.Languages;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.Actuals;

/// <summary>The launch point's page. Its script keeps what cannot be sent and sends it when there is a line; without script it is a form.</summary>
internal static class ActualsPages
{
    internal static void Map(RouteGroupBuilder pages)
    {
        pages.MapGet("", Show);
        var forms = pages.MapGroup("/{date}").RequireForm();
        forms.MapPost("", KeepAsync);
        forms.MapPost("/remove", RemoveAsync);
    }

    private static Results<RazorComponentResult<ActualsPage>, RazorComponentResult<NotFoundPage>> Show(
        string site, DateOnly? date, HttpRequest request, SiteStore sites, ActualStore store, ReportStore reports, TimeProvider clock) =>
        sites.Find(site) is { } kept ? Page(kept, date, new ActualFields(), [], request, store, reports, clock) : NotFoundPage.Result("page [not found]");

    private static RazorComponentResult<ActualsPage> Page(
        SiteJson site, DateOnly? asked, ActualFields fields, IReadOnlyList<ProblemError> errors, HttpRequest request, ActualStore store, ReportStore reports, TimeProvider clock)
    {
        var zone = site.ToSite().TimeZone;
        var today = LocalClock.DateAt(clock.GetUtcNow(), zone);
        var date = asked ?? today;
        var from = LocalClock.InstantOf(date, TimeOnly.MinValue, zone);
        var view = new ActualsView(
            Language.Of(request, site.Language), site, zone, date, date == today, store.Of(site.Id!, date),
            [.. reports.Of(site.Id!, ReportKind.Observation, from, from.AddHours(24)).Select(report => report.Raw)], fields, errors);
        return new(new Dictionary<string, object?> { [nameof(ActualsPage.Of)] = view })
        {
            StatusCode = errors.Count > 0 ? StatusCodes.Status422UnprocessableEntity : StatusCodes.Status200OK,
        };
    }

    private static async Task<IResult> KeepAsync(
        string site, DateOnly date, HttpRequest request, SiteStore sites, ActualStore store, ReportStore reports, TimeProvider clock, CancellationToken stopping)
    {
        if (sites.Find(site) is not { } kept)
            return NotFoundPage.Result("page [not found]");
        var fields = await ActualFields.ReadAsync(request, stopping);
        try
        {
            var now = TimeZoneInfo.ConvertTime(clock.GetUtcNow(), kept.ToSite().TimeZone).ToString("HH:mm", CultureInfo.InvariantCulture);
            store.Keep(site, date, [fields.Entry(kept, date, now)]);
        }
        catch (InvalidInputException refused)
        {
            return Page(kept, date, fields, refused.Errors, request, store, reports, clock);
        }

        return TypedResults.Redirect(Back(site, date));
    }

    private static async Task<IResult> RemoveAsync(string site, DateOnly date, HttpRequest request, ActualStore store, CancellationToken stopping)
    {
        store.Remove(site, date, (await request.ReadFormAsync(stopping))["id"].ToString());
        return TypedResults.Redirect(Back(site, date));
    }

    private static string Back(string site, DateOnly date) => string.Create(CultureInfo.InvariantCulture, $"/fields/{Uri.EscapeDataString(site)}/actuals?date={date:yyyy-MM-dd}");
}
