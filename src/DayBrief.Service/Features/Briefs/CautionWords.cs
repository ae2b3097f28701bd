using System.Collections.Frozen;
using DayBrief.Days;

namespace DayBrief.Service.Features.Briefs;

/// <summary>The words of one kind of caution.</summary>
/// <param name="Title">Its name, in English, which is the key of every other language.</param>
/// <param name="Line">What to do about it, in one short line.</param>
/// <param name="Text">All of it: the cause with its figure, then what follows from it.</param>
internal sealed record CautionWords(string Title, Func<Hazard, Reader, string> Line, Func<Hazard, Site, Reader, string> Text)
{
    /// <summary>Of every kind. A kind without words of its own is an error, never another's words.</summary>
    public static FrozenDictionary<HazardKind, CautionWords> All { get; } =
        StormText.Words.Concat(WindText.Words).Concat(HeightText.Words).Concat(ThermalText.Words).Concat(GroundText.Words)
            .ToFrozenDictionary(words => words.Key, words => words.Value);

    /// <summary>Words that no site changes.</summary>
    public static CautionWords Of(string title, Func<Hazard, Reader, string> line, Func<Hazard, Reader, string> text) =>
        new(title, line, (hazard, _, reader) => text(hazard, reader));
}
