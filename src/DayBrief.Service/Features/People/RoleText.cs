using DayBrief.Service.Languages;

namespace DayBrief.Service.Features.People;

/// <summary>Roles in words.</summary>
internal static class RoleText
{
    public static string Of(Role role, Language language) => role switch
    {
        Role.Administrator => language["administrator"],
        Role.Instructor => language["instructor"],
        _ => language["reader"],
    };
}
