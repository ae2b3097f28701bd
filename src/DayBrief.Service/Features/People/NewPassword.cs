using DayBrief.Service.Infrastructure;
using DayBrief.Service.Languages;

namespace DayBrief.Service.Features.People;

/// <summary>The two fields in which a new password is chosen.</summary>
internal static class NewPassword
{
    /// <exception cref="InvalidInputException">It cannot be taken, or was not typed the same twice.</exception>
    public static string Of(IFormCollection form, string name, string? email)
    {
        var password = form["password"].ToString();
        if (Passwords.Refuse(password, name, email) is { } why)
            throw InvalidInputException.Field("password", why);
        return password == form["again"].ToString()
            ? password
            : throw InvalidInputException.Field("again", Language.Text("The two are not the same."));
    }
}
