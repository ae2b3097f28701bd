namespace DayBrief.Service.Features.People;

/// <summary>A link for somebody to choose a password, shown once to the administrator who hands it on.</summary>
/// <param name="Name">Whom it is for.</param>
/// <param name="Address">The whole link.</param>
/// <param name="Until">Works until then.</param>
internal sealed record NewLink(string Name, string Address, DateTimeOffset Until)
{
    private static readonly TimeSpan Invitation = TimeSpan.FromDays(7);
    private static readonly TimeSpan Reset = TimeSpan.FromHours(24);

    /// <summary>Makes a link for a person, and the person with its hash. An earlier link stops working.</summary>
    public static (Person Person, NewLink Link) For(Person person, HttpRequest request, DateTimeOffset now)
    {
        var token = Secret.New();
        var until = now + (person.PasswordHash is null ? Invitation : Reset);
        return (
            person with { LinkHash = Secret.Hash(token), LinkUntil = until },
            new(person.Name, $"{request.Scheme}://{request.Host}/invitation?token={token}", until));
    }
}
