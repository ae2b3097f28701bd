using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Features.Soundings;
using DayBrief.Service.Infrastructure;
using DayBrief.Soundings;
using DayBrief.Texts;

namespace DayBrief.Service.Features.Desk;

/// <summary>What came of keeping the desk's fields: the draft, the brief it makes (null while it makes none), what is wrong,
/// and what another editor did meanwhile.</summary>
internal sealed record Kept(Draft Draft, DeskFields Fields, MadeBrief? Made, IReadOnlyList<ProblemError> Errors, Meeting? Meeting)
{
    /// <summary>The day whose lasting fields a new desk begins with.</summary>
    public DateOnly? LikeThatOf { get; init; }

    /// <summary>What this change did to the ascent.</summary>
    public AscentGiving Giving { get; init; } = AscentGiving.None;

    /// <summary>Values of the ascent in use that hardly occur, looked at or not.</summary>
    public IReadOnlyList<Remark> Asked { get; init; } = [];

    /// <summary>Two editors changed the same field: nothing was kept over the other's version.</summary>
    public bool IsConflict => Meeting is { Clashes.Count: > 0 };
}

/// <summary>Keeps every step of an instructor's work as a draft, whether it makes a brief yet or not.</summary>
internal sealed class Keeping(
    BriefStore briefs, BriefDesk desk, SiteStore sites, SoundingStore soundings, Announcements announcements)
{
    /// <summary>How a pasted text is called where it is kept.</summary>
    public const string PastedName = "pasted text";

    /// <summary>How typed levels are called where they are kept.</summary>
    public const string TypedName = "typed levels";

    /// <summary>Keeps fields that were seen at a version, merged with what another editor has kept since.</summary>
    /// <param name="id">The brief; null for a new one.</param>
    /// <param name="seen">The version that the editor's page shows.</param>
    /// <param name="fields">The fields.</param>
    /// <param name="file">A file with the ascent, with its name.</param>
    /// <param name="editor">Who edits.</param>
    /// <param name="over">Fields that were changed by both are taken from this editor.</param>
    public Kept Keep(string? id, int seen, DeskFields fields, (byte[] Content, string Name)? file, string? editor, bool over = false)
    {
        id ??= BriefStore.NewId();
        BriefLimits.CheckId(id);
        var (current, before) = (briefs.Find(id), FieldsOf(briefs.Find(id, seen)));
        var giving = AscentGiving.Take(fields, before, file, soundings);
        var meeting = current is not null && current.Version > seen ? Meeting.Of(before, FieldsOf(current), fields, current, over) : null;
        if (meeting is { Clashes.Count: > 0 })
            return new(current!, fields, null, [], meeting) { Giving = giving };
        var merged = meeting?.Merged ?? fields;
        if (giving.Turn == AscentTurn.Given)
            merged["kept"] = fields["kept"];
        var (draft, made, errors, asked) = Read(id, merged, giving.Errors, editor);
        if (current is not null && IsSame(current, draft))
            return new(current, merged, made is null ? null : desk.OfDraft(current), errors, meeting) { Giving = giving, Asked = asked };
        var kept = briefs.Save(draft, current?.Version ?? 0);
        if (kept is null)
            return Keep(id, seen, fields, file, editor, over);
        announcements.Tell(new(AnnouncementKind.DraftKept, id, kept.SiteId, kept.Date, kept.Version, editor, kept.EditedAt));
        return new(kept, merged, made is null ? null : desk.OfDraft(kept), errors, meeting) { Giving = giving, Asked = asked };
    }

    /// <summary>The desk as a draft left it; nothing is kept.</summary>
    public Kept Open(Draft draft)
    {
        var fields = FieldsOf(draft);
        var (_, made, errors, asked) = Read(draft.Id, fields, [], draft.EditedBy);
        return new(draft, fields, made is null ? null : desk.OfDraft(draft) ?? made, errors, null) { Asked = asked };
    }

    internal static DeskFields FieldsOf(Draft? draft) => draft switch
    {
        { Fields: { } typed } => new(typed),
        { Inputs: { } inputs } => InputFields.Of(inputs),
        _ => new(new Dictionary<string, string>()),
    };

    /// <summary>Saying the same again is no new version, whoever says it.</summary>
    private static bool IsSame(Draft current, Draft next) =>
        current is { Fields: not null, DiscardedAt: null }
        && FieldsOf(current).Values.SequenceEqual(FieldsOf(next).Values)
        && (current.Inputs is null) == (next.Inputs is null);

    private (Draft Draft, MadeBrief? Made, IReadOnlyList<ProblemError> Errors, IReadOnlyList<Remark> Asked) Read(
        string id, DeskFields fields, IReadOnlyList<ProblemError> ofFile, string? editor)
    {
        BriefInputs? inputs = null;
        IReadOnlyList<ProblemError> errors = ofFile;
        IReadOnlyList<Remark> asked = [];
        MadeBrief? made = null;
        try
        {
            var ascent = Ascent(fields);
            var read = new DeskReading(fields, sites).Read(ascent, desk.Now) with { OtherAscents = AscentsGiven.NotUsed(fields, soundings, ascent) };
            var sounding = desk.Sounding(read);
            asked = AscentAnswers.Asked(sounding);
            AscentAnswers.ThrowIfOpen(read, sounding);
            (inputs, made) = (read, new(id, read, desk.Computed(read)));
        }
        catch (InvalidInputException refused)
        {
            errors = [.. ofFile, .. refused.Errors.Select(error => DeskField.Of(error, fields))];
        }
        catch (InvalidSoundingException refused)
        {
            errors = [.. ofFile, .. refused.Refusals.Select(AscentCell.Of)];
        }

        var draft = new Draft
        {
            Id = id,
            SiteId = fields["site"],
            Date = DateOnly.TryParse(fields["date"], out var date) ? date : desk.Today,
            EditedBy = editor,
            EditedAt = desk.Now,
            Fields = fields.Values,
            Inputs = made is null ? null : inputs,
        };
        // A file that could not be used is told before anything is shown; the ascent that was in use stays.
        return (draft, ofFile.Count > 0 ? null : made, errors, asked);
    }

    /// <summary>Keeps the ascent that the fields mean; its id.</summary>
    private string Ascent(DeskFields fields)
    {
        var id = AscentGiving.Meant(fields) switch
        {
            AscentGiving.Text => soundings.Keep(fields.TextBytes, PastedName),
            AscentGiving.Typed => soundings.Keep(fields.TypedLevels(), TypedName),
            "" when fields.HasText || fields.HasTyped || fields["given"].Length > 0 => throw InvalidInputException.Field("kept", "None of the ascents at hand is chosen. Choose one."),
            "" => throw InvalidInputException.Field("text", "There is no ascent yet: paste it, choose its file, or type at least six levels."),
            var kept => kept,
        };
        return fields.NullIfEmpty("ascentIndex") is null && soundings.Facts(id) is { Several: { Count: > 1 } several }
            ? throw InvalidInputException.Field("ascentIndex", Offer(several))
            : id;
    }

    private static Words Offer(IReadOnlyList<SoundingSource> several)
    {
        var first = several.Take(12).Select((source, i) => $"{i} = {source.Station} {source.ValidAt:yyyy-MM-dd HH:mm 'UTC'}");
        return Words.Of($"The input holds {several.Count} ascents. Choose the one you want: {string.Join("; ", first)}{(several.Count > 12 ? " …" : "")}");
    }
}
