using System.Text.Json;
using DayBrief.Days;
using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Features.Soundings;
using DayBrief.Service.Infrastructure;
using DayBrief.Soundings;
using DayBrief.Units;

namespace DayBrief.Service.Features.Briefs;

/// <summary>Makes briefs from their inputs and finds them again. What was computed once is remembered while the program runs.</summary>
internal sealed class BriefDesk(BriefStore briefs, RevisionStore revisions, DayHeadStore heads, SoundingStore soundings, ComputingTime computing, SignedJournal journal, TimeProvider clock)
{
    private readonly Remembered<string, Brief> _computed = new(200);
    private readonly Remembered<string, Standing> _standings = new(200);

    public DateTimeOffset Now => clock.GetUtcNow();

    public DateOnly Today => DateOnly.FromDateTime(Now.UtcDateTime);

    /// <summary>Computes a brief, and keeps its inputs as a draft when that has worked.</summary>
    /// <exception cref="InvalidInputException">The site or an assumption cannot be used.</exception>
    /// <exception cref="InvalidSoundingException">The day cannot be computed from this ascent.</exception>
    public MadeBrief Make(BriefInputs inputs, string? id = null)
    {
        BriefLimits.Check(inputs);
        inputs.Judgement?.Check();
        var brief = Computed(inputs);
        id ??= BriefStore.NewId();
        briefs.Save(id, inputs);
        return new(id, inputs, brief) { Standing = new(null, 0, null) };
    }

    /// <summary>The brief as its readers get it: the revision that holds, else the draft; null when there is neither.</summary>
    public MadeBrief? Find(string id) =>
        revisions.Latest(id) is { } latest ? Of(latest) : briefs.Find(id) is { } draft ? OfDraft(draft) : null;

    /// <summary>One of its revisions.</summary>
    public MadeBrief? Find(string id, int number) => revisions.Find(id, number) is { } revision ? Of(revision) : null;

    /// <summary>A signed revision with how it stands now.</summary>
    /// <exception cref="NotAsSignedException">It is not what was signed.</exception>
    public MadeBrief Of(Revision revision)
    {
        if (journal.FaultOf(revision) is { } fault)
            throw new NotAsSignedException(revision.Id, fault);
        var made = new MadeBrief(revision.BriefId, revision.Inputs, Computed(revision.Inputs));
        var standing = _standings.Of(revision.Id, () => Judged(made, revision));
        return made with
        {
            Standing = standing with
            {
                Latest = revisions.LatestNumber(revision.BriefId) ?? revision.Number,
                Withdrawal = revisions.WithdrawalOf(revision.BriefId),
                Order = revisions.OrderOf(revision.SiteId, revision.Date),
                ReplacedBy = heads.Find(revision.SiteId, revision.Date) is { } head && head.RevisionId != revision.Id ? head : null,
            },
        };
    }

    /// <summary>A draft as its readers would get it; null while it makes no brief.</summary>
    public MadeBrief? OfDraft(Draft draft) =>
        draft.Inputs is { } inputs
            ? new(draft.Id, inputs, Computed(inputs)) { Standing = new(null, revisions.LatestNumber(draft.Id) ?? 0, null) }
            : null;

    /// <summary>Computes a brief; nothing is kept.</summary>
    public Brief Computed(BriefInputs inputs)
    {
        var key = JsonSerializer.Serialize(WithoutWords(inputs), Json.Line);
        var brief = _computed.Of(key, () => computing.Within(stopping => Compute(inputs, Sounding(inputs), stopping)));
        return brief with { PreparedBy = inputs.PreparedBy, PreparedAt = inputs.PreparedAt };
    }

    public static Brief Compute(BriefInputs inputs, Sounding sounding, CancellationToken stopping = default) => Brief.Prepare(new()
    {
        Sounding = Completed(sounding, inputs),
        Site = inputs.Site.ToSite(),
        Date = inputs.Date,
        Assumptions = inputs.Assumptions.ToAssumptions(),
        Observation = ReportsOfDay.Observation(inputs),
        Forecast = ReportsOfDay.Forecast(inputs),
        PreparedBy = inputs.PreparedBy,
        PreparedAt = inputs.PreparedAt,
        Stopping = stopping,
    });

    /// <summary>Without what stands beside the computed brief and changes nothing in it.</summary>
    private static BriefInputs WithoutWords(BriefInputs inputs) => inputs with
    {
        PreparedBy = null,
        PreparedAt = default,
        InstructorNote = null,
        Notes = null,
        DayLimits = null,
        Judgement = null,
        ValidUntil = null,
        RunwayInUse = null,
        AscentConfirmed = false,
        OtherAscents = null,
    };

    private Standing Judged(MadeBrief made, Revision revision)
    {
        var standing = new Standing(revision, revision.Number, null) { IsAsSigned = revision.IsIntact && Signing.ContentOf(made) == revision.Content };
        return revisions.Before(revision) is { } before
            ? standing with { Before = new(before.BriefId, before.Inputs, Computed(before.Inputs)), BeforeNumber = before.Number, InsteadOf = Others(revision) }
            : standing;
    }

    private string[] Others(Revision revision) =>
    [
        .. revisions.OrderOf(revision.SiteId, revision.Date).Select(one => one.BriefId).Distinct().Where(id => id != revision.BriefId),
    ];

    /// <summary>The ascent that inputs are computed from, as it says itself.</summary>
    public Sounding Sounding(BriefInputs inputs) =>
        soundings.Choose(inputs.SoundingId, inputs.AscentIndex, inputs.Site.ToSite(), inputs.Date)
            ?? throw InvalidInputException.Field("soundingId", $"No sounding is kept under \"{inputs.SoundingId}\".");

    /// <summary>Adds what the ascent does not say itself: where it went up, and the month of a message that states none.</summary>
    private static Sounding Completed(Sounding sounding, BriefInputs inputs)
    {
        var source = sounding.Source;
        return sounding.With(source with
        {
            Position = source.Position ?? (inputs.AscentLatitude is { } north && inputs.AscentLongitude is { } east
                ? Position.FromDegrees(north, east)
                : null),
            Elevation = source.Elevation ?? (inputs.AscentElevationM is { } metres ? Altitude.FromMetres(metres) : null),
            ValidAt = source.ValidAt ?? source.DayAndHour?.LatestUpTo(inputs.Date) ?? inputs.AscentValidAt,
        });
    }
}
