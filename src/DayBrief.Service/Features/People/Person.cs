namespace DayBrief.Service.Features.People;

/// <summary>Somebody who can sign in, or who has been invited to.</summary>
internal sealed record Person
{
    public required string Id { get; init; }

    public required string Name { get; init; }

    public string? Email { get; init; }

    public required Role Role { get; init; }

    /// <summary>Null until the invitation has been used.</summary>
    public string? PasswordHash { get; init; }

    /// <summary>Changes with password, role and disabling; a session with an older one has ended.</summary>
    public required string Stamp { get; init; }

    public bool Disabled { get; init; }

    public required DateTimeOffset AddedAt { get; init; }

    /// <summary>Hash of the token of an invitation, or of a link to choose a new password.</summary>
    public string? LinkHash { get; init; }

    public DateTimeOffset? LinkUntil { get; init; }

    public bool CanSignIn => !Disabled && PasswordHash is not null;

    /// <summary>The same person with all sessions ended.</summary>
    public Person WithNewStamp() => this with { Stamp = Secret.New() };

    /// <summary>Whether this is what the person calls himself when signing in.</summary>
    public bool IsCalled(string nameOrEmail) =>
        Same(Name, nameOrEmail) || (Email is not null && Same(Email, nameOrEmail));

    /// <summary>One spelling for all ways to write a name: case and spaces make no difference.</summary>
    public static string Plain(string name) =>
        string.Join(' ', name.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)).ToUpperInvariant();

    private static bool Same(string one, string other) => Plain(one) == Plain(other);
}
