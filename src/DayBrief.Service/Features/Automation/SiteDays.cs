using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.Briefs.Revisions;

namespace DayBrief.Service.Features.Automation;

/// <summary>The brief of a site's day as the automation meets it: the one place where drafts are made by themselves.</summary>
internal sealed class SiteDays(BriefStore briefs, RevisionStore revisions, BriefDesk desk)
{
    /// <summary>The day's brief: the revision that holds, else the draft; null when there is neither, or none that can be computed.</summary>
    public MadeBrief? Find(string siteId, DateOnly date) =>
        Signed(siteId, date) is { } revision
            ? desk.Of(revision)
            : Drafts(siteId, date).Where(draft => draft.DiscardedAt is null).Select(desk.OfDraft).FirstOrDefault(made => made is not null);

    /// <summary>The day's draft or brief, computable or not.</summary>
    public string? IdOf(string siteId, DateOnly date) =>
        Signed(siteId, date)?.BriefId ?? Drafts(siteId, date).FirstOrDefault()?.Id;

    public bool IsSigned(string siteId, DateOnly date) => Signed(siteId, date) is not null;

    /// <summary>Computes the day and keeps its inputs as a draft.</summary>
    /// <returns>The brief's id.</returns>
    public string MakeDraft(BriefInputs inputs)
    {
        desk.Computed(inputs);
        var draft = new Draft
        {
            Id = BriefStore.NewId(),
            SiteId = inputs.Site.Id!,
            Date = inputs.Date,
            Inputs = inputs,
            EditedBy = Draft.ByItself,
            EditedAt = inputs.PreparedAt,
        };
        return briefs.Save(draft, expected: 0)!.Id;
    }

    private Revision? Signed(string siteId, DateOnly date) =>
        revisions.Holding(siteId, date) is { } holding && revisions.WithdrawalOf(holding.BriefId) is null ? holding : null;

    private IEnumerable<Draft> Drafts(string siteId, DateOnly date) =>
        briefs.On(date).Where(draft => draft.SiteId == siteId && !draft.Demonstration);
}
