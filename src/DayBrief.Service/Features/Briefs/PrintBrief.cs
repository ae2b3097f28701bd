using DayBrief.Service.Charts;
using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Infrastructure;
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

    /// <summary>Where a sheet leads: to what holds for the field whenever somebody looks, not to the one brief that was printed.</summary>
    internal static string PathOf(MadeBrief made) => $"/fields/{Uri.EscapeDataString(made.Brief.Site.Id)}";

    internal static byte[] Pdf(MadeBrief made, params IReadOnlyList<Drawing> pages) => PdfWriter.Write(
        pages[0].Title, made.Brief.PreparedBy ?? "DayBrief", made.Brief.PreparedAt, pages);

    private static IResult ShowSheet(string id, BriefDesk desk, PublicAddress address, HttpRequest request, string? units)
    {
        if (desk.Find(id) is not { } made)
            return NotFoundPage.Result("brief [not found]");
        if (made.Standing is { IsAsSigned: false })
            return TypedResults.Redirect($"/briefs/{id}/sheet.pdf");
        return new RazorComponentResult<SheetPage>(new Dictionary<string, object?>
        {
            [nameof(SheetPage.Id)] = id,
            [nameof(SheetPage.Language)] = Language.Of(request, made.Brief.Site.Language),
            [nameof(SheetPage.Sheet)] = Drawn(made, desk, address, request, units),
            [nameof(SheetPage.Warning)] = AddressWarning.Of(address, request, Language.Of(request, made.Brief.Site.Language)),
        });
    }

    /// <summary>Drawn for this reader; of a brief that an earlier version of the program made, the file that was signed.</summary>
    private static IResult ShowPdf(
        string id, BriefDesk desk, PublishedFiles files, PublicAddress address, HttpRequest request, string? units)
    {
        if (desk.Find(id) is not { } made)
            return NotFoundPage.Result("brief [not found]");
        var pdf = made.Standing is { IsAsSigned: false, Revision: { } revision } ? files.Read(revision, ".pdf") : null;
        if (pdf is not null && made.Standing!.IsVoid)
            pdf = PdfWriter.Over(pdf, VoidStamp.Alone(made, desk.Now, ReaderOf(made, request, units)));
        return TypedResults.File(pdf ?? Pdf(made, Drawn(made, desk, address, request, units)), "application/pdf");
    }

    private static Drawing Drawn(MadeBrief made, BriefDesk desk, PublicAddress address, HttpRequest request, string? units)
    {
        var reader = ReaderOf(made, request, units);
        return VoidStamp.Over(BriefSheet.Draw(made, reader, address.Link(PathOf(made), request), desk.Now), made, desk.Now, reader);
    }

    private static Reader ReaderOf(MadeBrief made, HttpRequest request, string? units) =>
        Reader.Of(made.Brief.Site, units, Language.Of(request, made.Brief.Site.Language));
}
