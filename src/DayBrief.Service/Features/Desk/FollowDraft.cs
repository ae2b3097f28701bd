using System.Runtime.CompilerServices;
using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Features.People;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.Desk;

/// <summary>Tells an open desk that somebody else has kept another version.</summary>
internal static class FollowDraft
{
    private sealed record News(int Version, string? By);

    internal static void Map(WebApplication app) =>
        app.MapGet("/desk/{id}/events", Follow).ExcludeFromDescription().RequireAuthorization(Access.Instructor);

    private static ServerSentEventsResult<News> Follow(
        string id, Announcements announcements, IHostApplicationLifetime lifetime, CancellationToken stopping) =>
        TypedResults.ServerSentEvents(NewsAsync(id, announcements, lifetime.ApplicationStopping, stopping), eventType: "draft");

    private static async IAsyncEnumerable<News> NewsAsync(
        string id, Announcements announcements, CancellationToken ending, [EnumeratorCancellation] CancellationToken stopping)
    {
        using var either = CancellationTokenSource.CreateLinkedTokenSource(ending, stopping);
        await foreach (var announcement in announcements.FollowAsync(either.Token))
        {
            if (announcement is { Kind: AnnouncementKind.DraftKept } && announcement.BriefId == id)
                yield return new(announcement.Number, announcement.By);
        }
    }
}
