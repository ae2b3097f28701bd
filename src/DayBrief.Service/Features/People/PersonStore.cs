using DayBrief.Service.Infrastructure;
using DayBrief.Service.Languages;
using LiteDB;

namespace DayBrief.Service.Features.People;

/// <summary>Keeps the people. What must hold for all of them together is checked while no other write runs.</summary>
internal sealed class PersonStore(Database database)
{
    private const string Collection = "people";

    public bool Any() => database.Collection(Collection).Exists(Query.All());

    public IReadOnlyList<Person> All() => All(database.Collection(Collection));

    public Person? Find(string id) =>
        database.Collection(Collection).FindById(id) is { } found ? Person(found) : null;

    public Person? FindByName(string nameOrEmail) => All().FirstOrDefault(person => person.IsCalled(nameOrEmail));

    public Person? FindByLink(string token, DateTimeOffset now) =>
        All().FirstOrDefault(person => Secret.Matches(token, person.LinkHash) && person.LinkUntil > now && !person.Disabled);

    /// <summary>Adds the first of all; false when there is somebody already.</summary>
    public bool AddFirst(Person person)
    {
        var added = false;
        database.Write(Collection, people =>
        {
            if (people.Exists(Query.All()))
                return;
            people.Insert(Document(person));
            added = true;
        });
        return added;
    }

    /// <exception cref="InvalidInputException">The name or the e-mail address is somebody else's.</exception>
    public void Add(Person person) =>
        database.Write(Collection, people =>
        {
            ThrowIfTaken(All(people), person);
            people.Insert(Document(person));
        });

    /// <summary>Changes a person as found at that moment; null when there is none, or the change gives none.</summary>
    /// <exception cref="InvalidInputException">Nobody could administer any more.</exception>
    public Person? Change(string id, Func<Person, Person?> change)
    {
        Person? changed = null;
        database.Write(Collection, people =>
        {
            if (people.FindById(id) is not { } found || change(Person(found)) is not { } after)
                return;
            ThrowIfNobodyAdministers(All(people), Person(found), after);
            people.Update(Document(after));
            changed = after;
        });
        return changed;
    }

    private static void ThrowIfTaken(IReadOnlyList<Person> people, Person person)
    {
        var errors = new FieldErrors();
        if (people.Any(other => other.IsCalled(person.Name)))
            errors.Add("name", Language.Text("Somebody has this name already."));
        if (person.Email is { } email && people.Any(other => other.IsCalled(email)))
            errors.Add("email", Language.Text("Somebody has this e-mail address already."));
        errors.ThrowIfAny();
    }

    private static void ThrowIfNobodyAdministers(IReadOnlyList<Person> people, Person before, Person after)
    {
        if (Administers(before) && !Administers(after) && !people.Any(other => other.Id != before.Id && Administers(other)))
            throw InvalidInputException.Field("role", Language.Text("This is the last administrator who can sign in. Make somebody else one first."));
    }

    private static bool Administers(Person person) => person.CanSignIn && person.Role == Role.Administrator;

    private static List<Person> All(ILiteCollection<BsonDocument> people) =>
        [.. people.FindAll().Select(Person).OrderBy(person => person.Name, StringComparer.OrdinalIgnoreCase)];

    private static BsonDocument Document(Person person) => new()
    {
        ["_id"] = person.Id,
        ["person"] = System.Text.Json.JsonSerializer.Serialize(person, Json.Line),
    };

    private static Person Person(BsonDocument document) =>
        System.Text.Json.JsonSerializer.Deserialize<Person>(document["person"].AsString, Json.Line)!;
}
