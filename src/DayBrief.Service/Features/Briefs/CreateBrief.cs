using System.Text.Json;
using DayBrief.Service.Features.People;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Features.Soundings;
using DayBrief.Service.Infrastructure;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.Briefs;

/// <summary>Makes a brief from a kept ascent, a site, a date and assumptions.</summary>
internal static class CreateBrief
{
    /// <param name="SoundingId">Id of a kept ascent.</param>
    /// <param name="Site">A site as in SITE.json, or the id of a known site.</param>
    /// <param name="Date">The local date, YYYY-MM-DD.</param>
    /// <param name="PreparedBy">Who prepares it.</param>
    /// <param name="Assumptions">What is assumed of the day.</param>
    public sealed record Request(
        string? SoundingId, JsonElement? Site, DateOnly? Date, string? PreparedBy, AssumptionsJson? Assumptions)
    {
        /// <summary>Another name for <see cref="SoundingId"/>.</summary>
        public string? Sounding { get; init; }

        /// <summary>Which ascent of a file that holds several, from 0.</summary>
        public int? AscentIndex { get; init; }

        /// <summary>The latest METAR or SPECI.</summary>
        public string? Observation { get; init; }

        /// <summary>The latest TAF.</summary>
        public string? Forecast { get; init; }

        public double? AscentLatitude { get; init; }

        public double? AscentLongitude { get; init; }

        public double? AscentElevationM { get; init; }

        /// <summary>When the ascent was made, for ascents that do not say so themselves.</summary>
        public DateTimeOffset? AscentValidAt { get; init; }

        /// <summary>The values that are asked about have been looked at, and they stand.</summary>
        public bool AscentConfirmed { get; init; }
    }

    public sealed record Response(string Id, BriefJson Brief);

    internal static void Map(RouteGroupBuilder api) =>
        api.MapPost("/briefs", Handle)
            .WithName(nameof(CreateBrief))
            .WithSummary("Make a brief from a kept ascent, a site, a date and assumptions.")
            .RequireAuthorization(Access.Instructor);

    private static Created<Response> Handle(
        Request request, SoundingStore soundings, SiteStore sites, BriefDesk desk)
    {
        var errors = new FieldErrors();
        var soundingId = request.SoundingId ?? request.Sounding;
        if (soundingId is null || !soundings.IsKept(soundingId))
            errors.Add("soundingId", $"No sounding is kept under \"{soundingId}\"; send one to /api/v1/soundings first.");
        if (request.Date is null)
            errors.Add("date", "The date is needed, as year-month-day.");
        errors.ThrowIfAny();
        var made = desk.Make(new BriefInputs
        {
            SoundingId = soundingId!,
            Site = SiteOf(request.Site, sites),
            Date = request.Date!.Value,
            PreparedBy = request.PreparedBy,
            PreparedAt = desk.Now,
            AscentIndex = request.AscentIndex,
            Observation = request.Observation,
            Forecast = request.Forecast,
            AscentLatitude = request.AscentLatitude,
            AscentLongitude = request.AscentLongitude,
            AscentElevationM = request.AscentElevationM,
            AscentValidAt = request.AscentValidAt,
            AscentConfirmed = request.AscentConfirmed,
            Assumptions = request.Assumptions ?? new(),
        });
        return TypedResults.Created($"/api/v1/briefs/{made.Id}", new Response(made.Id!, BriefJson.Of(made)));
    }

    private static SiteJson SiteOf(JsonElement? site, SiteStore sites)
    {
        try
        {
            return Given(site, sites);
        }
        catch (InvalidOperationException)
        {
            throw InvalidInputException.Field("site", "The text is not UTF-8: a byte of it belongs to no character.");
        }
    }

    private static SiteJson Given(JsonElement? site, SiteStore sites) => site switch
    {
        { ValueKind: JsonValueKind.String } id => sites.Find(id.GetString()!)
            ?? throw InvalidInputException.Field("site", $"No site is kept under \"{id.GetString()}\"."),
        { ValueKind: JsonValueKind.Object } json => SiteJson.Parse(json.GetRawText()),
        _ => throw InvalidInputException.Field("site", "Needs a site as in SITE.json, or the short name of a kept one."),
    };
}
