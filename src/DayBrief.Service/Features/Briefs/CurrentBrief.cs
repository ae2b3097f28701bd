using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Features.People;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Briefs;

/// <summary>Which brief a reader gets who asks for today's.</summary>
internal sealed class CurrentBrief(BriefStore briefs, RevisionStore revisions, DayHeadStore heads, BriefDesk desk, Trial trial)
{
    /// <summary>A brief for a later day than these is not what somebody means who asks for today's; a mistyped year least of all.
    /// The evening before, and a course's last evening before a day off. Common practice, no source.</summary>
    private const int DaysAhead = 2;

    /// <summary>Today's signed brief (also when it was withdrawn: its readers must see that); else that of the next two days; else
    /// the newest signed before that still holds; else, while nothing has ever been signed, for whoever tries it at the
    /// machine the newest draft and otherwise the demonstration.</summary>
    /// <param name="site">Only of this site; null for any, of those whose code this reader has given if there is one.</param>
    /// <param name="asks">Who asks; null for nobody who may see drafts.</param>
    public MadeBrief? For(string? site, HttpContext? asks = null)
    {
        if (Head(site, asks) is { } head)
            return desk.Of(revisions.Find(head.BriefId, head.Number)!);
        if (!revisions.IsEmpty)
            return null;
        var draft = asks is not null && trial.Allows(asks) ? briefs.Newest().FirstOrDefault(draft => draft is { Demonstration: false, DiscardedAt: null } && IsShown(draft)) : null;
        draft ??= briefs.Find(DemonstrationDays.First) is { } invented && IsShown(invented) ? invented : null;
        return draft is null ? null : desk.OfDraft(draft);

        bool IsShown(Draft draft) => draft.Inputs is not null && (site is null || draft.SiteId == site);
    }

    private DayHead? Head(string? site, HttpContext? asks)
    {
        var open = site is null && asks is not null ? Choose(null, head => ReaderCodeCheck.MayRead(asks, head.SiteId)) : null;
        return open ?? Choose(site, _ => true);
    }

    private DayHead? Choose(string? site, Func<DayHead, bool> mayRead)
    {
        // A day more on both sides: somewhere on earth it is yesterday, and somewhere tomorrow.
        var near = heads.Between(desk.Today.AddDays(-1), desk.Today.AddDays(DaysAhead + 1), site).Where(mayRead)
            .Select(head => (Head: head, Ahead: DaysUntil(head))).ToArray();
        return near.Where(one => one.Ahead == 0).Select(one => one.Head).MaxBy(head => head.SignedAt)
            ?? near.Where(one => one.Ahead is > 0 and <= DaysAhead).OrderBy(one => one.Ahead).ThenByDescending(one => one.Head.SignedAt).Select(one => one.Head).FirstOrDefault()
            ?? Past(site).FirstOrDefault(mayRead);
    }

    /// <summary>What held on days that are over, the newest day first, and of one day the last signed.</summary>
    private IEnumerable<DayHead> Past(string? site)
    {
        var day = new List<DayHead>();
        foreach (var head in heads.Before(desk.Today.AddDays(1), site).Where(head => !head.IsWithdrawn && DaysUntil(head) < 0))
        {
            if (day.Count > 0 && day[0].Date != head.Date)
            {
                foreach (var one in Latest(day))
                    yield return one;
                day.Clear();
            }

            day.Add(head);
        }

        foreach (var one in Latest(day))
            yield return one;

        static IEnumerable<DayHead> Latest(IEnumerable<DayHead> day) => day.OrderByDescending(head => head.SignedAt);
    }

    private int DaysUntil(DayHead head) =>
        head.Date.DayNumber - LocalClock.DateAt(desk.Now, TimeZoneInfo.TryFindSystemTimeZoneById(head.TimeZone, out var zone) ? zone : TimeZoneInfo.Utc).DayNumber;
}
