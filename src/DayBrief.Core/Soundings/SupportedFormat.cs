namespace DayBrief.Soundings;

/// <summary>A format in which an ascent can be given.</summary>
/// <param name="Name">Its name, as in <see cref="SoundingSource.Format"/>.</param>
/// <param name="Standard">The standard or document it follows.</param>
/// <param name="Looks">What it looks like, in a few words.</param>
public sealed record SupportedFormat(string Name, string Standard, string Looks);
