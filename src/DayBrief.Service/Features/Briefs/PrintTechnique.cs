using DayBrief.Service.Charts;
using DayBrief.Service.Features.Technique;
using DayBrief.Service.Languages;
using Hangfire;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.Briefs;

/// <summary>The technique page for the board, for the glider, instrument and experience of the link.</summary>
internal static class PrintTechnique
{
    internal static void Map(RouteGroupBuilder app)
    {
        app.MapGet("/briefs/{id}/technique", ShowSheet).ExcludeFromDescription();
        app.MapGet("/briefs/{id}/technique.pdf", ShowPdf).ExcludeFromDescription();
    }

    private static Results<RazorComponentResult<SheetPage>, RazorComponentResult<NotFoundPage>, RedirectHttpResult> ShowSheet(
        string id, HttpRequest request, BriefDesk desk, TechniqueDesk technique, IBackgroundJobClient jobs)
    {
        if (desk.Find(id) is not { } made)
            return NotFoundPage.Result("brief [not found]");
        if (DrawingOf(made, desk.Now, request, technique, jobs) is not { } drawing)
            return TypedResults.Redirect($"/briefs/{id}#fly");
        return new RazorComponentResult<SheetPage>(new Dictionary<string, object?>
        {
            [nameof(SheetPage.Id)] = id,
            [nameof(SheetPage.Sheet)] = drawing,
            [nameof(SheetPage.Language)] = Language.Of(request, made.Brief.Site.Language),
            [nameof(SheetPage.Pdf)] = $"/briefs/{id}/technique.pdf{request.QueryString}",
        });
    }

    private static Results<FileContentHttpResult, RazorComponentResult<NotFoundPage>, RedirectHttpResult> ShowPdf(
        string id, HttpRequest request, BriefDesk desk, TechniqueDesk technique, IBackgroundJobClient jobs)
    {
        if (desk.Find(id) is not { } made)
            return NotFoundPage.Result("brief [not found]");
        return DrawingOf(made, desk.Now, request, technique, jobs) is { } drawing
            ? TypedResults.File(PrintBrief.Pdf(made, drawing), "application/pdf")
            : TypedResults.Redirect($"/briefs/{id}#fly");
    }

    /// <summary>Null while the study is being computed, and on a day without thermals: the brief says which.</summary>
    private static Drawing? DrawingOf(
        MadeBrief made, DateTimeOffset now, HttpRequest request, TechniqueDesk technique, IBackgroundJobClient jobs)
    {
        var pilot = Pilot.Of(request);
        var reader = Reader.Of(made.Brief.Site, UnitsChoice.Of(request), Language.Of(request, made.Brief.Site.Language));
        var view = TechniqueView.For(made.Brief, pilot, reader.Figures, technique, jobs);
        return view is { Facts: not null } or { TooLow: true } ? Draw(made, view, now, reader) : null;
    }

    /// <summary>The page for the pilot of a view that is computed.</summary>
    internal static Drawing Draw(MadeBrief made, TechniqueView view, DateTimeOffset now, Reader reader) => VoidStamp.Over(
        TechniqueSheet.Draw(
            view,
            reader.Say($"How to fly it: {made.Brief.Site.Name}"),
            reader.Say($"{reader.Date(made.Brief.Date)}, {PilotText.Group(view.Pilot, reader.Language)}, for a {GliderText.Name(view.Pilot.Glider, reader.Language)}, variometer {view.Pilot.Variometer.LagS:0.#} s."),
            BriefBanners.Of(made, now, reader).Select(banner => banner.Text),
            reader[Advice.Standing]),
        made, now, reader);
}
