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
    /// <summary>Two editors changed the same field: nothing was kept over the other's version.</summary>
    public bool IsConflict => Meeting is { Clashes.Count: > 0 };
}

/// <summary>Keeps every step of an instructor's work as a draft, whether it makes a brief yet or not.</summary>
internal sealed class Keeping(
    BriefStore briefs, BriefDesk desk, SiteStore sites, SoundingStore soundings, Announcements announcements)
{
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
        var current = briefs.Find(id);
        var meeting = current is not null && current.Version > seen
            ? Meeting.Of(FieldsOf(briefs.Find(id, seen)), FieldsOf(current), fields, current, over)
            : null;
        if (meeting is { Clashes.Count: > 0 })
            return new(current!, fields, null, [], meeting);
        var merged = meeting?.Merged ?? fields;
        var (draft, made, errors) = Read(id, merged, file, editor);
        if (current is not null && IsSame(current, draft))
            return new(current, merged, desk.OfDraft(current), errors, meeting);
        var kept = briefs.Save(draft, current?.Version ?? 0);
        if (kept is null)
            return Keep(id, seen, fields, file, editor, over);
        announcements.Tell(new(AnnouncementKind.DraftKept, id, kept.SiteId, kept.Date, kept.Version, editor, kept.EditedAt));
        return new(kept, merged, made is null ? null : desk.OfDraft(kept), errors, meeting);
    }

    /// <summary>The desk as a draft left it; nothing is kept.</summary>
    public Kept Open(Draft draft)
    {
        var fields = FieldsOf(draft);
        var (_, made, errors) = Read(draft.Id, fields, null, draft.EditedBy);
        return new(draft, fields, made is null ? null : desk.OfDraft(draft) ?? made, errors, null);
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

    private (Draft Draft, MadeBrief? Made, IReadOnlyList<ProblemError> Errors) Read(
        string id, DeskFields fields, (byte[] Content, string Name)? file, string? editor)
    {
        BriefInputs? inputs = null;
        IReadOnlyList<ProblemError> errors = [];
        MadeBrief? made = null;
        try
        {
            var ascent = Ascent(fields, file);
            inputs = new DeskReading(fields, sites).Read(ascent, desk.Now);
            made = new(id, inputs, desk.Computed(inputs));
        }
        catch (InvalidInputException refused)
        {
            errors = [.. refused.Errors.Select(error => DeskField.Of(error, fields))];
        }
        catch (InvalidSoundingException refused)
        {
            errors = [.. refused.Refusals.Select(AscentCell.Of)];
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
        return (draft, made, errors);
    }

    /// <summary>Keeps the ascent that came with the fields; its id. A file comes first, then what is pasted or typed, then one
    /// that was kept before.</summary>
    private string Ascent(DeskFields fields, (byte[] Content, string Name)? file)
    {
        var given = file ?? fields.Ascent();
        if (given is not { } ascent)
        {
            return fields.NullIfEmpty("kept")
                ?? throw InvalidInputException.Field("text", "There is no ascent yet: paste it, choose its file, or type at least six levels.");
        }

        if (file is not null)
            fields.ShowFile(ascent.Content);
        var id = soundings.Keep(ascent.Content, ascent.Name);
        fields["kept"] = id;
        if (fields.NullIfEmpty("ascentIndex") is null && soundings.Contents(id) is { Count: > 1 } several && !IsForecast(several))
            throw InvalidInputException.Field("ascentIndex", Offer(several));
        return id;
    }

    /// <summary>Hours of one forecast belong together and need no choice.</summary>
    private static bool IsForecast(IReadOnlyList<SoundingSource> several) => several[0].Format is "CSV" or "JSON";

    private static Words Offer(IReadOnlyList<SoundingSource> several)
    {
        var first = several.Take(12).Select((source, i) => $"{i} = {source.Station} {source.ValidAt:yyyy-MM-dd HH:mm 'UTC'}");
        return Words.Of($"The input holds {several.Count} ascents. Give the number of the one you want below: {string.Join("; ", first)}{(several.Count > 12 ? " …" : "")}");
    }
}
