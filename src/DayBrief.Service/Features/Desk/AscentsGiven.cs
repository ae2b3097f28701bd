using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.Soundings;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Desk;

/// <summary>How an ascent came to the desk.</summary>
internal enum AscentOrigin
{
    Pasted,
    Typed,
    File,
    Fetched,
    Kept,
}

/// <summary>What was given at one desk: the pasted text, the typed levels, the files.</summary>
internal static class AscentsGiven
{
    /// <summary>Facts are null where it cannot be used.</summary>
    public static IReadOnlyList<(string Value, AscentFacts? Facts, AscentOrigin Origin)> Of(DeskFields fields, SoundingStore soundings) =>
    [
        .. fields.HasText ? [(AscentGiving.Text, soundings.Facts(SoundingStore.IdOf(fields.TextBytes)), AscentOrigin.Pasted)] : Array.Empty<(string, AscentFacts?, AscentOrigin)>(),
        .. fields.HasTyped ? [(AscentGiving.Typed, Typed(fields, soundings), AscentOrigin.Typed)] : Array.Empty<(string, AscentFacts?, AscentOrigin)>(),
        .. fields.Lines("given").Where(soundings.IsKept).Select(id => (id, soundings.Facts(id), AscentOrigin.File)),
    ];

    /// <summary>Those of them that the brief is not computed from, with why.</summary>
    public static IReadOnlyList<OtherAscentJson>? NotUsed(DeskFields fields, SoundingStore soundings, string usedId)
    {
        var print = soundings.Facts(usedId)?.Fingerprint;
        OtherAscentJson[] others =
        [
            .. Of(fields, soundings)
                .Where(given => given.Facts is null || (given.Facts.Id != usedId && given.Facts.Fingerprint != print))
                .DistinctBy(given => given.Facts?.Fingerprint ?? given.Value)
                .Select(given => new OtherAscentJson(
                    Choice.NameOf(given.Origin), given.Origin == AscentOrigin.File ? given.Facts?.Name : null, given.Facts?.Source.Station,
                    given.Facts?.Source.ValidAt, given.Facts?.Source.Format, given.Facts is null ? OtherAscentJson.NotReadable : OtherAscentJson.AnotherChosen)),
            .. fields.Lines("refusedFiles").Select(name => new OtherAscentJson(Choice.NameOf(AscentOrigin.File), name, null, null, null, OtherAscentJson.NotReadable)),
        ];
        return others.Length > 0 ? others : null;
    }

    private static AscentFacts? Typed(DeskFields fields, SoundingStore soundings)
    {
        try
        {
            return soundings.Facts(SoundingStore.IdOf(fields.TypedLevels()));
        }
        catch (InvalidInputException)
        {
            return null;
        }
    }
}
