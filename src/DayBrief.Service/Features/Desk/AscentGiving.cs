using DayBrief.Service.Features.Soundings;
using DayBrief.Service.Infrastructure;
using DayBrief.Soundings;

namespace DayBrief.Service.Features.Desk;

/// <summary>How the ascent in use came to be in use with this change of the desk.</summary>
internal enum AscentTurn
{
    /// <summary>It is the one that was.</summary>
    Same,

    /// <summary>A new one was pasted, sent as a file or typed, and is taken for that.</summary>
    Given,

    /// <summary>The editor chose it among those at hand.</summary>
    Chosen,
}

/// <summary>What a change of the desk did to the ascent: the one in use is always named by the field <c>kept</c>, which holds
/// <see cref="Text"/>, <see cref="Typed"/> or the id of a kept one.</summary>
/// <param name="Turn">Whether it is another.</param>
/// <param name="Cleared">Answers that were about the one before and are gone with it.</param>
/// <param name="Errors">Why a file that came could not be used.</param>
/// <param name="ShowsFile">The file's text now stands where text is pasted, to be mended there.</param>
internal sealed record AscentGiving(AscentTurn Turn, IReadOnlyList<string> Cleared, IReadOnlyList<ProblemError> Errors, bool ShowsFile)
{
    /// <summary>Value of <c>kept</c> for the pasted text.</summary>
    public const string Text = "text";

    /// <summary>Value of <c>kept</c> for the typed levels.</summary>
    public const string Typed = "typed";

    /// <summary>Value of <c>kept</c> when the one that was in use is gone and none is chosen yet: nothing takes its place in silence.</summary>
    public const string Nothing = "-";

    private static readonly string[] Answers = ["ascentIndex", "ascentDate", "ascentTime", "ascentConfirmed"];

    public static AscentGiving None { get; } = new(AscentTurn.Same, [], [], ShowsFile: false);

    /// <summary>Chooses the ascent that is meant, and notes it in the fields: what is given anew, else what was picked.</summary>
    /// <param name="now">The fields as sent; they are changed.</param>
    /// <param name="was">The fields as the editor's page showed them.</param>
    /// <param name="file">A file that came with them.</param>
    /// <param name="soundings">Where ascents are kept.</param>
    public static AscentGiving Take(DeskFields now, DeskFields was, (byte[] Content, string Name)? file, SoundingStore soundings)
    {
        Remember(now, was, "given");
        Remember(now, was, "refusedFiles");
        var before = Meant(was);
        var errors = new List<ProblemError>();
        var (picked, shows) = (now["kept"].Length > 0 && now["kept"] != Nothing ? Meant(now) : before, false);
        var given = file is { } came ? FileOf(came, now, soundings, errors, out shows) : null;
        given ??= now.HasText && now["text"] != was["text"] ? Text : null;
        given ??= now.HasTyped && !now.TypedAsIn(was) ? Typed : null;
        now["kept"] = given ?? (Stands(picked, now) ? picked : Nothing);
        var isOther = now["kept"] != before || (given == Text && IsAnother(was, now));
        var turn = given is not null ? AscentTurn.Given : isOther && picked.Length > 0 ? AscentTurn.Chosen : AscentTurn.Same;
        return new(turn, isOther && before.Length > 0 ? Clear(now, was, Answers) : given is not null ? Clear(now, was, "ascentConfirmed") : [], errors, shows);
    }

    /// <summary>The ascent that fields mean; those kept by an earlier version named the pasted text by its id.</summary>
    public static string Meant(DeskFields fields) =>
        fields["kept"] == Nothing ? ""
        : fields.HasText && (fields["kept"].Length == 0 || fields["kept"] == SoundingStore.IdOf(fields.TextBytes)) ? Text
        : fields["kept"].Length == 0 && fields.HasTyped ? Typed
        : fields["kept"];

    private static bool Stands(string value, DeskFields fields) => value switch
    {
        Text => fields.HasText,
        Typed => fields.HasTyped,
        _ => true,
    };

    /// <summary>The id of a usable file; of a text that cannot be used its place in the form, where that is free.</summary>
    private static string? FileOf(
        (byte[] Content, string Name) file, DeskFields now, SoundingStore soundings, List<ProblemError> errors, out bool shows)
    {
        shows = false;
        try
        {
            var id = soundings.Keep(file.Content, file.Name);
            now["given"] = Line(id, now["given"]);
            now["refusedFiles"] = Without(file.Name, now["refusedFiles"]);
            return id;
        }
        catch (InvalidSoundingException refused)
        {
            shows = !now.HasText && now.ShowFile(file.Content);
            if (shows)
                return Text;
            errors.AddRange(refused.Refusals.Select(refusal => ProblemError.Of(refusal) with { Field = "file" }));
            now["refusedFiles"] = Line(file.Name, now["refusedFiles"]);
            return null;
        }
    }

    /// <summary>Answers about another ascent are no answers about this one; what was answered just now stays.</summary>
    private static string[] Clear(DeskFields now, DeskFields was, params string[] answers)
    {
        string[] cleared = [.. answers.Where(field => now[field].Length > 0 && now[field] == was[field])];
        foreach (var field in cleared)
            now[field] = "";
        return cleared;
    }

    /// <summary>Fewer than half of the lines are still there: not the same text mended.</summary>
    private static bool IsAnother(DeskFields was, DeskFields now) =>
        was.Lines("text") is { Count: > 0 } lines && 2 * lines.Count(now.Lines("text").ToHashSet().Contains) < lines.Count;

    private static void Remember(DeskFields now, DeskFields was, string field)
    {
        foreach (var line in was.Lines(field).Reverse())
            now[field] = now.Lines(field).Contains(line) ? now[field] : Line(line, now[field]);
    }

    private static string Line(string first, string others) => string.Join('\n', others.Split('\n').Prepend(first).Where(line => line.Length > 0).Distinct());

    private static string Without(string gone, string lines) => string.Join('\n', lines.Split('\n').Where(line => line != gone));
}
