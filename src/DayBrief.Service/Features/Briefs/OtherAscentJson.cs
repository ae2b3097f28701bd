namespace DayBrief.Service.Features.Briefs;

/// <summary>An ascent that was given for the brief and that it is not computed from.</summary>
/// <param name="GivenAs">How it came: <c>pasted</c>, <c>typed</c>, <c>file</c>.</param>
/// <param name="Name">Of its file.</param>
/// <param name="Station">As it says itself.</param>
/// <param name="ValidAt">When it is valid.</param>
/// <param name="Format">As it was read.</param>
/// <param name="Why"><see cref="AnotherChosen"/> or <see cref="NotReadable"/>.</param>
public sealed record OtherAscentJson(string GivenAs, string? Name, string? Station, DateTimeOffset? ValidAt, string? Format, string Why)
{
    public const string AnotherChosen = "another-chosen";

    public const string NotReadable = "not-readable";
}
