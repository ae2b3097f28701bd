using DayBrief.Service.Infrastructure;
using DayBrief.Service.Languages;

namespace DayBrief.Service.Features.Briefs;

/// <summary>Says before something is printed that the address on it may lead nobody anywhere.</summary>
internal static class AddressWarning
{
    private const string Variable = "DayBrief__PublicAddress";

    /// <summary>Null where an address is set that others can reach.</summary>
    public static string? Of(PublicAddress address, HttpRequest request, Language language)
    {
        var printed = address.Link("", request);
        if (Uri.TryCreate(printed, UriKind.Absolute, out var found) && found.IsLoopback)
            return language.Say($"Before you print: the code and the address on the sheet lead to {printed}, which is this computer only. No phone reaches it. Whoever runs the service sets {Variable}.");
        return address.IsSet
            ? null
            : language.Say($"Before you print: no public address is set. The code and the address on the sheet are what this browser was called with, {printed}; a phone may not reach it. Whoever runs the service sets {Variable}.");
    }
}
