using System.Globalization;
using System.Text.RegularExpressions;
using DayBrief.Service.Features.People;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Features.Soundings;
using DayBrief.Service.Infrastructure;
using DayBrief.Soundings;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.Briefs;

/// <summary>The form page, and what happens when it is sent.</summary>
internal static partial class SubmitBriefForm
{
    internal static void Map(WebApplication app)
    {
        app.MapGet("/briefs/new", Show).ExcludeFromDescription().RequireAuthorization(Access.Instructor);
        app.MapPost("/briefs", SubmitAsync).ExcludeFromDescription().DisableAntiforgery().RequireAuthorization(Access.Instructor);
    }

    private static RazorComponentResult<BriefForm> Show(SiteStore sites, BriefDesk desk)
    {
        var all = sites.All();
        return Page(BriefFormInput.Empty(desk.Today, all.Count > 0 ? all[0] : null), all, []);
    }

    private static async Task<IResult> SubmitAsync(
        HttpRequest request, SiteStore sites, SoundingStore soundings, BriefDesk desk, CancellationToken stopping)
    {
        var (input, file, fileName) = await BriefFormInput.ReadAsync(request, stopping);
        try
        {
            return Results.Redirect($"/briefs/{Make(input, file, fileName, sites, soundings, desk).Id}");
        }
        catch (InvalidInputException refused)
        {
            return Refuse(input, file, sites, refused.Errors);
        }
        catch (InvalidSoundingException refused)
        {
            return Refuse(input, file, sites, [.. refused.Refusals.Select(ProblemError.Of).Select(AtItsField)]);
        }
    }

    private static MadeBrief Make(
        BriefFormInput input, byte[]? file, string? fileName, SiteStore sites, SoundingStore soundings, BriefDesk desk)
    {
        var errors = new FieldErrors();
        var date = DateOnly.TryParse(input["date"], CultureInfo.InvariantCulture, out var day) ? day : default;
        if (date == default)
            errors.Add("date", "The date is needed, as year-month-day.");
        var inputs = new BriefInputs
        {
            SoundingId = "",
            Site = SiteOf(input, sites, errors) with { GroundWetness = input.NullIfEmpty("groundWetness") },
            Date = date,
            PreparedBy = input.NullIfEmpty("preparedBy"),
            InstructorNote = input.NullIfEmpty("instructorNote"),
            Observation = input.NullIfEmpty("observation"),
            Forecast = input.NullIfEmpty("forecast"),
            AscentIndex = (int?)errors.Optional("ascentIndex", input.Number("ascentIndex", errors), 0, 20_000),
            PreparedAt = desk.Now,
            AscentLatitude = errors.Optional("ascentLatitude", input.Number("ascentLatitude", errors), -90, 90),
            AscentLongitude = errors.Optional("ascentLongitude", input.Number("ascentLongitude", errors), -180, 180),
            AscentElevationM = errors.Optional("ascentElevationM", input.Number("ascentElevationM", errors), -500, 6000),
            Assumptions = new()
            {
                MaxTemperatureC = errors.Optional("maxTemperatureC", input.Number("maxTemperatureC", errors), -30, 55),
                CloudOktas = errors.Optional("cloudOktas", input.Number("cloudOktas", errors), 0, 8),
            },
        };
        errors.ThrowIfAny();
        var (content, name) = input.Ascent(file, fileName);
        var id = soundings.Save(content, name).Id;
        return inputs.AscentIndex is null && soundings.Contents(id) is { Count: > 1 } several && !IsForecast(several)
            ? throw InvalidInputException.Field("ascentIndex", Offer(several))
            : desk.Make(inputs with { SoundingId = id });
    }

    /// <summary>Hours of one forecast belong together and need no choice.</summary>
    private static bool IsForecast(IReadOnlyList<SoundingSource> several) => several[0].Format is "CSV" or "JSON";

    private static string Offer(IReadOnlyList<SoundingSource> several) =>
        $"The input holds {several.Count} ascents. Give the number of the one you want below: "
        + string.Join("; ", several.Take(12).Select((source, i) => $"{i} = {source.Station} {source.ValidAt:yyyy-MM-dd HH:mm 'UTC'}"))
        + (several.Count > 12 ? "; and so on." : ".");

    private static SiteJson SiteOf(BriefFormInput input, SiteStore sites, FieldErrors errors) =>
        input.NullIfEmpty("site") is { } id
            ? sites.Find(id) ?? throw InvalidInputException.Field("site", $"No site is kept under \"{id}\".")
            : new SiteJson
            {
                Name = input.NullIfEmpty("siteName"),
                Latitude = errors.Number("latitude", input.Number("latitude", errors), -90, 90),
                Longitude = errors.Number("longitude", input.Number("longitude", errors), -180, 180),
                ElevationM = errors.Number("elevationM", input.Number("elevationM", errors), -500, 6000),
                TimeZone = input.NullIfEmpty("timeZone"),
                UsableDepthM = errors.Optional("usableDepthM", input.Number("usableDepthM", errors), 100, 5000),
                GroundCover = input.NullIfEmpty("groundCover"),
                Units = input.NullIfEmpty("units"),
            };

    private static RazorComponentResult<BriefForm> Refuse(
        BriefFormInput input, byte[]? file, SiteStore sites, IReadOnlyList<ProblemError> errors)
    {
        if (file is not null)
            input.ShowFile(file);
        var page = Page(input, sites.All(), errors);
        page.StatusCode = StatusCodes.Status422UnprocessableEntity;
        return page;
    }

    private static RazorComponentResult<BriefForm> Page(
        BriefFormInput input, IReadOnlyList<SiteJson> sites, IReadOnlyList<ProblemError> errors) =>
        new(new Dictionary<string, object?>
        {
            [nameof(BriefForm.Input)] = input,
            [nameof(BriefForm.Sites)] = sites,
            [nameof(BriefForm.Refused)] = errors,
        });

    /// <summary>Brings an error of the ascent to the cell it was typed into, or to the pasted text.</summary>
    private static ProblemError AtItsField(ProblemError error)
    {
        var typed = TypedField().Match(error.Field ?? "");
        var field = typed.Success
            ? typed.Groups[2].Value switch
            {
                "pressureHpa" => "p",
                "heightM" => "h",
                "temperatureC" => "t",
                "windDirectionDeg" => "wd",
                "windSpeedKt" => "ws",
                _ => "d",
            }
            + typed.Groups[1].Value
            : "text";
        return error with { Field = field };
    }

    [GeneratedRegex(@"^levels\[(\d+)\]\.(\w+)$")]
    private static partial Regex TypedField();
}
