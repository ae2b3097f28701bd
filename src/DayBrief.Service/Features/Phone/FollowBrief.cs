using System.Text.Json;
using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Infrastructure;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.Net.Http.Headers;

namespace DayBrief.Service.Features.Phone;

/// <summary>Tells an open page that it shows no longer what holds: as server-sent events, and for asking now and then.</summary>
internal static class FollowBrief
{
    private sealed record Answer(string State);

    internal static void Map(RouteGroupBuilder pages)
    {
        foreach (var root in new[] { "", "/fields/{site}" })
        {
            pages.MapGet($"{root}/events", FollowCurrent).ExcludeFromDescription();
            pages.MapGet($"{root}/state", TellCurrent).ExcludeFromDescription();
        }

        pages.MapGet("/briefs/{id}/events", Follow).ExcludeFromDescription();
        pages.MapGet("/briefs/{id}/state", Tell).ExcludeFromDescription();
    }

    private static ServerSentEventsResult<string> FollowCurrent(
        string? site, HttpContext context, CurrentBrief current, BriefDesk desk, Following following, CancellationToken stopping) =>
        Events(following.StatesAsync(() => BriefState.Of(current.For(site, context), desk.Now), stopping));

    private static ServerSentEventsResult<string> Follow(string id, BriefDesk desk, Following following, CancellationToken stopping) =>
        Events(following.StatesAsync(() => BriefState.Of(desk.Find(id), desk.Now), stopping));

    private static FileContentHttpResult TellCurrent(string? site, HttpContext context, CurrentBrief current, BriefDesk desk) =>
        Told(BriefState.Of(current.For(site, context), desk.Now), context.Response);

    private static FileContentHttpResult Tell(string id, BriefDesk desk, HttpResponse response) =>
        Told(BriefState.Of(desk.Find(id), desk.Now), response);

    private static ServerSentEventsResult<string> Events(IAsyncEnumerable<string> states) =>
        TypedResults.ServerSentEvents(states, eventType: "state");

    /// <summary>The state is its own tag: who knows it already gets 304 and no content.</summary>
    private static FileContentHttpResult Told(string state, HttpResponse response)
    {
        response.Headers.CacheControl = "private, no-cache";
        return TypedResults.Bytes(
            JsonSerializer.SerializeToUtf8Bytes(new Answer(state), Json.Line), "application/json", entityTag: new EntityTagHeaderValue($"\"{state}\""));
    }
}
