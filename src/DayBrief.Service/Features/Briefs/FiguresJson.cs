using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Briefs;

/// <summary>The figures that readers get, the instructor's where he overrules the computed ones.</summary>
internal sealed record FiguresJson(
    double? TriggerTemperatureC, DateTimeOffset? TriggerTime, double? UsableTopAglM, double? ClimbMs, DateTimeOffset? LastThermal, bool Overruled)
{
    public static FiguresJson Of(DayFigures figures) => new(
        Json.Rounded(figures.Trigger?.Celsius, 2),
        figures.TriggerTime,
        Json.Rounded(figures.UsableTop?.Metres, 1),
        Json.Rounded(figures.Climb?.MetresPerSecond, 3),
        figures.Last,
        figures.Judgement is not null);
}

/// <summary>How a kept brief stands: draft, signed, amended, replaced, withdrawn.</summary>
internal sealed record StandingJson(
    string State, int? Revision, string? SignedBy, DateTimeOffset? SignedAt, string? Reason, string? Sha256, int LatestRevision, string? WithdrawnBy,
    DateTimeOffset? WithdrawnAt, string? WithdrawnBecause, int? ReplacedByRevision, DateTimeOffset? ReplacedAt, string? ReplacedBecause)
{
    public static StandingJson? Of(Standing? standing) => standing is null
        ? null
        : new(
            standing switch
            {
                { IsReplaced: true } => "replaced",
                { Withdrawal: not null } => "withdrawn",
                { Revision.Number: 1 } => "signed",
                { Revision: not null } => "amended",
                _ => "draft",
            },
            standing.Revision?.Number,
            standing.Revision?.SignedBy,
            standing.Revision?.SignedAt,
            standing.Revision?.Reason,
            standing.Revision?.Hash,
            standing.Latest,
            standing.Withdrawal?.By,
            standing.Withdrawal?.At,
            standing.Withdrawal?.Reason,
            standing.ReplacedBy?.Number,
            standing.ReplacedBy?.SignedAt,
            standing.ReplacedBy?.Reason);
}
