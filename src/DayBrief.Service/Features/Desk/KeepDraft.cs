using System.Globalization;
using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.People;
using DayBrief.Service.Features.Soundings;
using DayBrief.Service.Infrastructure;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.Desk;

/// <summary>Keeps what stands on the desk: at every change where the page's script sends it, else when the form is sent.</summary>
internal static class KeepDraft
{
    /// <summary>Set by the script: it wants the outcome alone, not the page.</summary>
    internal const string LiveHeader = "X-Desk";

    internal static void Map(WebApplication app)
    {
        app.MapPost("/briefs", (HttpContext context, Keeping keeping, DeskViews views, CancellationToken stopping) =>
            HandleAsync(null, context, keeping, views, stopping)).AsForm();
        app.MapPost("/desk/{id}", HandleAsync).AsForm();
    }

    private static RouteHandlerBuilder AsForm(this RouteHandlerBuilder route) =>
        route.ExcludeFromDescription().RequireAuthorization(Access.Instructor).RequireForm();

    private static async Task<Results<RazorComponentResult<DeskResult>, RazorComponentResult<DeskPage>, RedirectHttpResult>> HandleAsync(
        string? id, HttpContext context, Keeping keeping, DeskViews views, CancellationToken stopping)
    {
        var fields = await DeskFields.ReadAsync(context.Request, stopping);
        var form = await context.Request.ReadFormAsync(stopping);
        CheckLengths(fields);
        var seen = int.TryParse(form["version"], CultureInfo.InvariantCulture, out var version) ? version : 0;
        var kept = keeping.Keep(
            id, seen, fields, await FileAsync(form.Files["file"], stopping), DeskViews.Editor(context), over: form["resolve"] == "mine");
        var status = kept.IsConflict ? StatusCodes.Status409Conflict : StatusCodes.Status200OK;
        if (context.Request.Headers.ContainsKey(LiveHeader))
            return Outcome(views.OutcomeOf(kept, context), status);
        if (kept.Made is not null && kept.Meeting is null)
            return TypedResults.Redirect($"/desk/{kept.Draft.Id}");
        return OpenDesk.Page(views.Of(kept, context), kept.Made is null && !kept.IsConflict ? StatusCodes.Status422UnprocessableEntity : status);
    }

    private static RazorComponentResult<DeskResult> Outcome(DeskView view, int status) =>
        new(new Dictionary<string, object?>
        {
            [nameof(DeskResult.View)] = view,
        })
        { StatusCode = status };

    /// <summary>No field but the ascent's text holds more than pages of writing.</summary>
    private static void CheckLengths(DeskFields fields)
    {
        var errors = new FieldErrors();
        foreach (var (name, value) in fields.Values.Where(field => field.Key != "text"))
            errors.Length(name, value, BriefLimits.FieldLength);
        errors.ThrowIfAny();
    }

    private static async Task<(byte[] Content, string Name)?> FileAsync(IFormFile? file, CancellationToken stopping)
    {
        if (file is not { Length: > 0 })
            return null;
        if (file.Length > SoundingBody.MaxBytes)
            throw SoundingBody.TooLarge("file");
        using var buffer = new MemoryStream();
        await file.CopyToAsync(buffer, stopping);
        return (buffer.ToArray(), file.FileName);
    }
}
