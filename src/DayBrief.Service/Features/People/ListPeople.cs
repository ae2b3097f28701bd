using DayBrief.Service.Infrastructure;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.People;

/// <summary>The page on which administrators see and change who may do what.</summary>
internal static class ListPeople
{
    internal static void Map(RouteGroupBuilder administration) => administration.MapGet("", Show);

    private static RazorComponentResult<PeoplePage> Show(PersonStore people, TimeProvider clock) => Page(people.All(), clock.GetUtcNow());

    public static RazorComponentResult<PeoplePage> Page(
        IReadOnlyList<Person> people, DateTimeOffset now, NewLink? link = null, NewPerson? entered = null, IReadOnlyList<ProblemError>? errors = null) =>
        new(new Dictionary<string, object?>
        {
            [nameof(PeoplePage.People)] = people,
            [nameof(PeoplePage.Now)] = now,
            [nameof(PeoplePage.Link)] = link,
            [nameof(PeoplePage.Entered)] = entered,
            [nameof(PeoplePage.Refused)] = errors,
        })
        {
            StatusCode = errors is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity,
        };
}
