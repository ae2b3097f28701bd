using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.Briefs.Revisions;

namespace DayBrief.Service.Features.Desk;

/// <summary>A new day that begins as the one before: what stays from day to day comes back, what belongs to the day does not.</summary>
internal sealed class AsBefore(BriefStore briefs, RevisionStore revisions)
{
    private static readonly string[] Stays =
    [
        "site", "siteName", "latitude", "longitude", "elevationM", "timeZone", "usableDepthM", "groundCover", "units", "runway", "cloudOktas",
        "instructorNote", "noteBeforeSolo", "noteLocalSolo", "noteCrossCountry",
        .. Enumerable.Range(0, DeskFields.Periods).SelectMany(row => new[] { $"cloudFrom{row}", $"cloudOktas{row}" }),
    ];

    /// <summary>The site's last brief before a day: what was signed, else a draft; null when there is none.</summary>
    public Draft? Last(string siteId, DateOnly day)
    {
        for (var before = day.AddDays(-1); before > day.AddDays(-60); before = before.AddDays(-1))
        {
            var drafts = briefs.On(before).Where(draft => draft.SiteId == siteId && draft is { Demonstration: false, DiscardedAt: null, Inputs: not null }).ToArray();
            if (drafts.FirstOrDefault(draft => revisions.Latest(draft.Id) is not null) is { } signed)
                return signed;
            if (drafts.Length > 0)
                return drafts[0];
        }

        return null;
    }

    /// <summary>What stays of a brief's fields.</summary>
    public static IReadOnlyDictionary<string, string> Of(Draft draft) =>
        Keeping.FieldsOf(draft).Values.Where(field => Stays.Contains(field.Key)).ToDictionary();
}
