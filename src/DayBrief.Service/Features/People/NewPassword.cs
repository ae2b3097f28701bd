using DayBrief.Service.Infrastructure;
using DayBrief.Service.Languages;

namespace DayBrief.Service.Features.People;

/// <summary>The two fields in which a new password is chosen.</summary>
internal static class NewPassword
{
    /// <exception cref="InvalidInputException">It cannot be taken, or was not typed the same twice.</exception>
    public static string Of(IFormCollection form, string name, string? email)
    {
        var errors = new FieldErrors();
        var password = Of(form, name, email, errors);
        errors.ThrowIfAny();
        return password;
    }

    public static string Of(IFormCollection form, string name, string? email, FieldErrors errors)
    {
        var password = form["password"].ToString();
        if (Passwords.Refuse(password, name, email) is { } why)
            errors.Add("password", why);
        else if (password != form["again"].ToString())
            errors.Add("again", Language.Text("The two are not the same."));
        return password;
    }
}
