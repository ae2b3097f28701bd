using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Features.People;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Languages;

namespace DayBrief.Service.Features.Briefs;

/// <summary>One step from a new installation to its first brief.</summary>
/// <param name="Words">What to do.</param>
/// <param name="Address">Where; null for outside the browser.</param>
/// <param name="IsDone">It has been done.</param>
internal sealed record FirstStep(string Words, string? Address, bool IsDone);

/// <summary>What is still to be done before a new installation shows a day of its own; the same for everybody who asks.</summary>
internal sealed class FirstSteps(PersonStore people, Trial trial, SiteStore sites, RevisionStore revisions)
{
    public IReadOnlyList<FirstStep> Of(Language language)
    {
        var field = sites.All().FirstOrDefault(site => site.Id != DemonstrationDays.FieldId);
        return
        [
            new(language["Become the administrator: open the link that the service printed where it was started."], null, people.Any()),
            new(language["Add your field: where it is, its runways, its limits."], "/sites/new", field is not null),
            new(language["Invite the instructors who prepare and sign with you."], "/people", people.All().Count > 1),
            new(language["Prepare the first brief at the desk, and sign it."], field is null ? "/desk" : $"/briefs/new?site={Uri.EscapeDataString(field.Id!)}", !revisions.IsEmpty),
        ];
    }

    /// <summary>The line above the demonstration: that it is one, and what comes next; null once something has been signed.</summary>
    public FirstStep? Next(Language language)
    {
        if (!revisions.IsEmpty)
            return null;
        var words = trial.IsOn ? language["New installation: this day is invented. What to do next"]
            : sites.All().All(site => site.Id == DemonstrationDays.FieldId) ? language["Nothing published yet: this day is invented. Next: add your field"]
            : language["Nothing published yet: this day is invented. Next: the first brief"];
        return new(words, ShowFirstSteps.Address, IsDone: false);
    }
}
