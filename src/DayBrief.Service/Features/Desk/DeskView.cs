using DayBrief.Days;
using DayBrief.Service.Features.Arrivals;
using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Features.People;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Features.Technique;
using DayBrief.Service.Infrastructure;
using DayBrief.Service.Languages;
using Hangfire;

namespace DayBrief.Service.Features.Desk;

/// <summary>All that the desk's page shows.</summary>
internal sealed record DeskView(Kept Kept, Reader Reader, DateTimeOffset Now)
{
    public IReadOnlyList<SiteJson> Sites { get; init; } = [];

    /// <summary>The ascents at hand, the one in use among them, and what is asked about it.</summary>
    public required AscentChoices Ascents { get; init; }

    /// <summary>What was given and is not used, with why.</summary>
    public IReadOnlyList<Unused> NotUsed => Kept.Made is { } made ? [.. Briefs.NotUsed.Of(made, Reader)] : [];

    /// <summary>How to fly it, as the pilots get it.</summary>
    public TechniqueView? Technique { get; init; }

    public Revision? Latest { get; init; }

    /// <summary>What holds for the draft's field and day; null while nothing was signed for it.</summary>
    public DayHead? Holding { get; init; }

    /// <summary>Another brief holds for the draft's field and day: signing puts this one in its place.</summary>
    public bool Replaces => Holding is { } holding && holding.BriefId != Kept.Draft.Id;

    /// <summary>Where what is printed leads to, and what is the matter with that; null where all is well.</summary>
    public string? AddressWarning { get; init; }

    public Withdrawal? Withdrawal { get; init; }

    /// <summary>The name that goes under the brief; null when nobody has signed in who may sign.</summary>
    public string? SignsAs { get; init; }

    /// <summary>Somebody else may be at it.</summary>
    public string? Notice { get; init; }

    /// <summary>What the day has brought against the brief.</summary>
    public IReadOnlyList<string> Flags { get; init; } = [];

    public IReadOnlyList<ProblemError> SignErrors { get; init; } = [];

    public string? Reason { get; init; }

    public bool IsKept => Kept.Draft.Version > 0;

    public string? Title => Kept.Made is { } made ? $"{made.Brief.Site.Name}, {Reader.Date(made.Brief.Date)}" : null;

    /// <summary>The computed figures by the field that overrules them.</summary>
    public IReadOnlyDictionary<string, string> Computed => ComputedFigures.Of(Kept.Made, Reader);
}

/// <summary>Puts the desk's view together.</summary>
internal sealed class DeskViews(
    SiteStore sites, AscentChooser ascents, RevisionStore revisions, DayHeadStore heads, BriefStore briefs, DayNews news, BriefDesk desk,
    TechniqueDesk technique, IBackgroundJobClient jobs, PublicAddress address)
{
    /// <summary>Two people within this time are told of each other. Common practice, no source.</summary>
    private static readonly TimeSpan StillAtIt = TimeSpan.FromMinutes(15);

    public DeskView Of(Kept kept, HttpContext context)
    {
        var view = OutcomeOf(kept, context);
        var reader = view.Reader;
        var who = Who.Of(context);
        return view with
        {
            Sites = sites.All(),
            Latest = revisions.Latest(kept.Draft.Id),
            Holding = heads.Find(kept.Draft.SiteId, kept.Draft.Date),
            AddressWarning = Briefs.AddressWarning.Of(address, context.Request, reader.Language),
            Withdrawal = revisions.WithdrawalOf(kept.Draft.Id),
            SignsAs = who is { ByKey: false, Role: >= Role.Instructor } ? who.Name : null,
            Flags = news.Of(kept.Draft.SiteId, kept.Draft.Date, reader.Zone, reader.Language),
            Notice = kept.LikeThatOf is { } day
                ? reader.Say($"Begun as on {reader.Date(day)}: site, runway, cloud and notes are brought back. Look at each; the ascent, temperatures, reports and limits of the day are new.")
                : Notice(kept.Draft, Editor(context), reader),
        };
    }

    /// <summary>What the outcome alone needs, which is asked for at every change.</summary>
    public DeskView OutcomeOf(Kept kept, HttpContext context)
    {
        var reader = ReaderOf(kept, context.Request);
        return new(kept, reader, desk.Now)
        {
            Ascents = ascents.Of(kept, reader),
            Technique = kept.Made is { } made ? TechniqueView.For(made.Brief, Pilot.Of(context.Request), reader.Figures, technique, jobs) : null,
        };
    }

    /// <summary>The name that a draft is kept under.</summary>
    public static string? Editor(HttpContext context) => Who.Of(context)?.Name;

    private Reader ReaderOf(Kept kept, HttpRequest request)
    {
        var site = sites.Find(kept.Fields["site"]);
        var units = Choice.Parse<SiteUnits>(site?.Units ?? kept.Fields["units"]) ?? SiteUnits.FeetAndKnots;
        var zone = TimeZoneInfo.TryFindSystemTimeZoneById(site?.TimeZone ?? kept.Fields["timeZone"], out var known) ? known : TimeZoneInfo.Utc;
        // The desk speaks to the one who sits at it; readers get the site's language or their own.
        return new(units, zone, Language.Of(request));
    }

    private string? Notice(Draft draft, string? editor, Reader reader) =>
        draft.DiscardedAt is { } discarded
            ? reader.Say($"This draft was discarded {reader.DateAndTime(discarded)} by {draft.EditedBy ?? reader["somebody"]}. \"Keep and show\" brings it back.")
        : draft.Version > 0 && draft.EditedBy != editor && draft.EditedBy != Draft.ByItself && briefs.Find(draft.Id) is { } current && desk.Now - current.EditedAt < StillAtIt
            ? reader.Say($"{draft.EditedBy ?? reader["somebody"]} kept this draft at {reader.Time(draft.EditedAt)} and may still be at it. Nothing is overwritten: what both of you change is shown to you.")
            : null;
}
