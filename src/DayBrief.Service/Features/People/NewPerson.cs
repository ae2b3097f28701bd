using System.Net.Mail;
using DayBrief.Service.Infrastructure;
using DayBrief.Service.Languages;

namespace DayBrief.Service.Features.People;

/// <summary>Somebody to be added, as typed.</summary>
internal sealed record NewPerson(string Name, string? Email)
{
    private const int LongestName = 80;
    private const int LongestEmail = 200;

    public static NewPerson Of(IFormCollection form) => new(
        form["name"].ToString().Trim(),
        form["email"].ToString().Trim() is { Length: > 0 } email ? email : null);

    public void Check(FieldErrors errors)
    {
        if (Name.Length is 0 or > LongestName || Name.Any(char.IsControl))
            errors.Add("name", Language.Text("A name of at most 80 characters is needed."));
        // Names are for people, addresses for mail: so that nobody can take the other's address as his name.
        else if (Name.Contains('@', StringComparison.Ordinal))
            errors.Add("name", Language.Text("The name is no e-mail address; that has its own field."));
        if (Email is not null && (Email.Length > LongestEmail || !MailAddress.TryCreate(Email, out var address) || address.Address != Email))
            errors.Add("email", Language.Text("This is not an e-mail address."));
    }

    /// <exception cref="InvalidInputException">Name or e-mail address cannot be used.</exception>
    public Person Checked(Role role, DateTimeOffset now)
    {
        var errors = new FieldErrors();
        Check(errors);
        errors.ThrowIfAny();
        return new()
        {
            Id = Guid.CreateVersion7(now).ToString("N"),
            Name = Name,
            Email = Email,
            Role = role,
            Stamp = Secret.New(),
            AddedAt = now,
        };
    }
}
