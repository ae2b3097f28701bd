using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Features.People;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Briefs;

/// <summary>Which brief a reader gets who asks for today's.</summary>
internal sealed class CurrentBrief(BriefStore briefs, RevisionStore revisions, BriefDesk desk, Trial trial)
{
    /// <summary>Today's signed brief (also when it was withdrawn: its readers must see that); else the newest signed; else, while
    /// nothing has ever been signed, for whoever tries it at the machine the newest draft and otherwise the demonstration.</summary>
    /// <param name="site">Only of this site; null for any.</param>
    /// <param name="asks">Who asks; null for nobody who may see drafts.</param>
    public MadeBrief? For(string? site, HttpContext? asks = null)
    {
        if (Today().FirstOrDefault(revision => site is null || revision.SiteId == site) is { } today)
            return desk.Of(today);
        if (!revisions.IsEmpty)
            return revisions.Newest(site) is { } newest ? desk.Of(newest) : null;
        var draft = asks is not null && trial.Allows(asks) ? briefs.Newest().FirstOrDefault(draft => draft is { Demonstration: false, DiscardedAt: null } && IsShown(draft)) : null;
        draft ??= briefs.Find(DemonstrationDays.First) is { } invented && IsShown(invented) ? invented : null;
        return draft is null ? null : desk.OfDraft(draft);

        bool IsShown(Draft draft) => draft.Inputs is not null && (site is null || draft.SiteId == site);
    }

    /// <summary>The revisions that hold for today, each by its own site's calendar, the last signed first.</summary>
    public IReadOnlyList<Revision> Today()
    {
        var today = desk.Today;
        return
        [
            .. new[] { today, today.AddDays(-1), today.AddDays(1) }
                .SelectMany(revisions.HoldingOn)
                .Where(revision => revision.Date == LocalDate(revision))
                .OrderByDescending(revision => revision.SignedAt),
        ];
    }

    private DateOnly LocalDate(Revision revision) => LocalClock.DateAt(desk.Now, revision.Inputs.Site.ToSite().TimeZone);
}
