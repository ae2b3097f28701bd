namespace DayBrief.Service.Features.Desk;

/// <summary>An ascent that the desk can use.</summary>
/// <param name="Value">What the field <c>kept</c> says when it is in use.</param>
/// <param name="Words">Station, time, age, format, levels, and how it came.</param>
/// <param name="IsUsed">The brief is computed from it.</param>
internal sealed record AscentAtHand(string Value, string Words, bool IsUsed);

/// <summary>The ascents that the desk can use, by what people tell them apart, and what is asked about the one in use.</summary>
/// <param name="Ascents">Each once, those given here first.</param>
/// <param name="Several">The ascents of the file in use, where it holds several: number and words.</param>
/// <param name="AsksTime">The one in use does not say when it was made.</param>
/// <param name="Asked">Values of the one in use that hardly occur.</param>
/// <param name="Refused">Files that came and could not be used.</param>
/// <param name="Said">That another one is in use now, and why.</param>
internal sealed record AscentChoices(
    IReadOnlyList<AscentAtHand> Ascents,
    IReadOnlyList<(string Number, string Words)> Several,
    bool AsksTime,
    IReadOnlyList<string> Asked,
    IReadOnlyList<string> Refused,
    string? Said)
{
    public AscentAtHand? Used => Ascents.FirstOrDefault(ascent => ascent.IsUsed);
}
