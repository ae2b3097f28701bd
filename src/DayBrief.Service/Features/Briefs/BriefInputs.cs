using System.Text.Json.Serialization;
using DayBrief.Service.Features.Sites;

namespace DayBrief.Service.Features.Briefs;

/// <summary>All that a brief is made of. The same inputs make the same brief, so these are what is kept.</summary>
public sealed record BriefInputs
{
    public required string SoundingId { get; init; }

    /// <summary>The site as a brief needs it: not what it has done by itself nor to whom it sends, whose addresses may hold a key.</summary>
    public required SiteJson Site
    {
        get;
        init
        {
            ReportStation = value.Automation?.ReportStation ?? ReportStation;
            field = value with { Automation = null, Sending = null };
        }
    }

    /// <summary>The station that reports for the field; null when the site names none.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? ReportStation { get; init; }

    public required DateOnly Date { get; init; }

    public string? PreparedBy { get; init; }

    public required DateTimeOffset PreparedAt { get; init; }

    /// <summary>Where the balloon went up, for ascents that do not say so themselves.</summary>
    public double? AscentLatitude { get; init; }

    public double? AscentLongitude { get; init; }

    public double? AscentElevationM { get; init; }

    /// <summary>When the ascent was made, for ascents that do not say so themselves.</summary>
    public DateTimeOffset? AscentValidAt { get; init; }

    /// <summary>The instructor has looked at the values that are asked about, and they stand.</summary>
    public bool AscentConfirmed { get; init; }

    /// <summary>Ascents that were given too and are not what it is computed from.</summary>
    public IReadOnlyList<OtherAscentJson>? OtherAscents { get; init; }

    public AssumptionsJson Assumptions { get; init; } = new();

    /// <summary>Which ascent of a file that holds several, from 0; null for the one nearest to the morning.</summary>
    public int? AscentIndex { get; init; }

    /// <summary>The latest observation (METAR or SPECI), as written.</summary>
    public string? Observation { get; init; }

    /// <summary>The latest forecast for an aerodrome (TAF), as written.</summary>
    public string? Forecast { get; init; }

    /// <summary>What the instructor adds for the course.</summary>
    public string? InstructorNote { get; init; }

    /// <summary>The instructor's notes by experience.</summary>
    public NotesJson? Notes { get; init; }

    /// <summary>Designator of the runway in use; null when none is stated.</summary>
    public string? RunwayInUse { get; init; }

    /// <summary>What limits flying today, one a line.</summary>
    public string? DayLimits { get; init; }

    /// <summary>The figures that the instructor overrules.</summary>
    public JudgementJson? Judgement { get; init; }

    /// <summary>Local time after which the brief is not to be used without an amendment; null for sunset.</summary>
    public TimeOnly? ValidUntil { get; init; }

    /// <summary>Invented for demonstration; every form of the brief says so.</summary>
    public bool Demonstration { get; init; }
}
