using DayBrief.Service.Charts;
using DayBrief.Service.Languages;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.Briefs;

/// <summary>The sheet for the launch point: as a page and as PDF, both from one drawing.</summary>
internal static class PrintBrief
{
    internal static void Map(RouteGroupBuilder app)
    {
        app.MapGet("/briefs/{id}/sheet", ShowSheet).ExcludeFromDescription();
        app.MapGet("/briefs/{id}/sheet.pdf", ShowPdf).ExcludeFromDescription();
    }

    internal static byte[] Pdf(MadeBrief made, Drawing sheet) => PdfWriter.Write(
        sheet.Title, made.Brief.PreparedBy ?? "DayBrief", made.Brief.PreparedAt, sheet);

    private static Results<RazorComponentResult<SheetPage>, RazorComponentResult<NotFoundPage>> ShowSheet(
        string id, BriefDesk desk, HttpRequest request, string? units)
    {
        if (desk.Find(id) is not { } made)
            return NotFoundPage.Result("brief");
        return new RazorComponentResult<SheetPage>(new Dictionary<string, object?>
        {
            [nameof(SheetPage.Id)] = id,
            [nameof(SheetPage.Language)] = Language.Of(request, made.Brief.Site.Language),
            [nameof(SheetPage.Sheet)] = BriefSheet.Draw(made, Reader.Of(made.Brief.Site, units, Language.Of(request, made.Brief.Site.Language)), Address(request, id), desk.Now),
        });
    }

    private static Results<FileContentHttpResult, RazorComponentResult<NotFoundPage>> ShowPdf(
        string id, BriefDesk desk, HttpRequest request, string? units)
    {
        if (desk.Find(id) is not { } made)
            return NotFoundPage.Result("brief");
        var sheet = BriefSheet.Draw(made, Reader.Of(made.Brief.Site, units, Language.Of(request, made.Brief.Site.Language)), Address(request, id), desk.Now);
        return TypedResults.File(Pdf(made, sheet), "application/pdf");
    }

    private static string Address(HttpRequest request, string id) => $"{request.Scheme}://{request.Host}/briefs/{id}";
}
