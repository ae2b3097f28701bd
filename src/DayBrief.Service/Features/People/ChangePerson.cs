using DayBrief.Service.Infrastructure;
using DayBrief.Service.Languages;
using Microsoft.AspNetCore.Http.HttpResults;

namespace DayBrief.Service.Features.People;

/// <summary>Gives a person another role, a link for a new password, or no access any more. Each ends the sessions it should.</summary>
internal sealed class ChangePerson(PersonStore people, SignInPauses pauses, AuditLog audit, TimeProvider clock)
{
    internal static void Map(RouteGroupBuilder administration)
    {
        administration.MapPost("/{id}/role", ChangeRoleAsync);
        administration.MapPost("/{id}/disable", Disable);
        administration.MapPost("/{id}/enable", Enable);
        administration.MapPost("/{id}/link", MakeLink);
    }

    private static async Task<IResult> ChangeRoleAsync(string id, HttpContext context, ChangePerson change, CancellationToken stopping)
    {
        var form = await context.Request.ReadFormAsync(stopping);
        return Choice.Parse<Role>(form["role"]) is { } role
            ? change.Apply(
                id, context, person => person.Role == role ? null : person.WithNewStamp() with { Role = role }, Language.Text("Changed a role"), Choice.NameOf(role))
            : Back();
    }

    private static IResult Disable(string id, HttpContext context, ChangePerson change) => change.Apply(
        id, context, person => person.Disabled ? null : person.WithNewStamp() with { Disabled = true, LinkHash = null, LinkUntil = null }, Language.Text("Disabled a person"));

    private static IResult Enable(string id, HttpContext context, ChangePerson change) => change.Apply(
        id, context, person => person.Disabled ? person with { Disabled = false } : null, Language.Text("Enabled a person"));

    private static Results<RazorComponentResult<PeoplePage>, RedirectHttpResult> MakeLink(string id, HttpContext context, ChangePerson change)
    {
        NewLink? link = null;
        var now = change.Now;
        var person = change.People.Change(id, person =>
        {
            if (person.Disabled)
                return null;
            (person, link) = NewLink.For(person, context.Request, now);
            return person;
        });
        if (person is null)
            return Back();
        change.Note(context, person, Language.Text("Made a link for a new password"));
        context.Response.Headers.CacheControl = "no-store";
        return ListPeople.Page(change.People.All(), now, link);
    }

    private PersonStore People => people;

    private DateTimeOffset Now => clock.GetUtcNow();

    private static RedirectHttpResult Back() => TypedResults.Redirect("/people");

    private IResult Apply(string id, HttpContext context, Func<Person, Person?> to, string action, string? detail = null)
    {
        try
        {
            if (people.Change(id, to) is { } changed)
                Note(context, changed, action, detail);
            return Back();
        }
        catch (InvalidInputException refused)
        {
            return ListPeople.Page(people.All(), Now, errors: refused.Errors);
        }
    }

    /// <summary>A pause of the name ends with what an administrator decides about the person.</summary>
    private void Note(HttpContext context, Person person, string action, string? detail = null)
    {
        audit.Write(Who.Of(context), action, person.Name, detail);
        pauses.Clear(person.Name);
        if (person.Email is { } email)
            pauses.Clear(email);
    }
}
