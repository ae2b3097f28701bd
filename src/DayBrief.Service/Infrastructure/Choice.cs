using System.Text.Json;

namespace DayBrief.Service.Infrastructure;

/// <summary>Names of choices outside the program: lower case with hyphens, such as "bare-soil".</summary>
internal static class Choice
{
    public static string NameOf<T>(T choice)
        where T : struct, Enum => JsonNamingPolicy.KebabCaseLower.ConvertName(choice.ToString());

    public static IEnumerable<string> Names<T>()
        where T : struct, Enum => Enum.GetValues<T>().Select(NameOf);

    public static T? Parse<T>(string? name)
        where T : struct, Enum
    {
        foreach (var choice in Enum.GetValues<T>())
        {
            if (string.Equals(NameOf(choice), name?.Trim(), StringComparison.OrdinalIgnoreCase))
                return choice;
        }

        return null;
    }
}
