using DayBrief.Service.Infrastructure;
using DayBrief.Service.Languages;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.People;

/// <summary>Adds a person, who chooses a password by a one-time link that the administrator hands on.</summary>
internal static class InvitePerson
{
    internal static void Map(RouteGroupBuilder administration) => administration.MapPost("", HandleAsync);

    private static async Task<RazorComponentResult<PeoplePage>> HandleAsync(
        HttpContext context, PersonStore people, AuditLog audit, TimeProvider clock, CancellationToken stopping)
    {
        var form = await context.Request.ReadFormAsync(stopping);
        var (entered, now) = (NewPerson.Of(form), clock.GetUtcNow());
        try
        {
            var errors = new FieldErrors();
            var role = errors.OneOf("role", form["role"], Role.Instructor);
            errors.ThrowIfAny();
            var (person, link) = NewLink.For(entered.Checked(role, now), context.Request, now);
            people.Add(person);
            audit.Write(Who.Of(context), Language.Text("Invited a person"), person.Name, Choice.NameOf(role));
            context.Response.Headers.CacheControl = "no-store";
            return ListPeople.Page(people.All(), now, link);
        }
        catch (InvalidInputException refused)
        {
            return ListPeople.Page(people.All(), now, entered: entered, errors: refused.Errors);
        }
    }
}
