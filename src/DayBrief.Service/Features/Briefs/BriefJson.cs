using DayBrief.Days;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Features.Soundings;
using DayBrief.Service.Features.Technique;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Briefs;

/// <summary>The whole brief for programs.</summary>
internal sealed record BriefJson
{
    public string? Id { get; init; }

    public required SiteJson Site { get; init; }

    public required DateOnly Date { get; init; }

    public required string? PreparedBy { get; init; }

    public required DateTimeOffset? PreparedAt { get; init; }

    public required bool Demonstration { get; init; }

    public required string Sentence { get; init; }

    /// <summary>How it stands with its readers; null for a brief that is not kept.</summary>
    public required StandingJson? Standing { get; init; }

    /// <summary>Id of the brief that has taken its place for its field and day; null while it holds.</summary>
    public required string? ReplacedBy { get; init; }

    /// <summary>The figures that readers get; the computed ones stand in <see cref="Day"/>.</summary>
    public required FiguresJson Figures { get; init; }

    public required JudgementJson? Judgement { get; init; }

    public required NotesJson? Notes { get; init; }

    public required string? InstructorNote { get; init; }

    public required string? DayLimits { get; init; }

    public required string? RunwayInUse { get; init; }

    public required DateTimeOffset? ValidUntil { get; init; }

    public required AscentJson Ascent { get; init; }

    public required AscentUsedJson AscentUsed { get; init; }

    /// <summary>What was given and is not used.</summary>
    public required IReadOnlyList<UnusedJson> NotUsed { get; init; }

    public required DayJson Day { get; init; }

    public required double? ConvectiveTemperatureC { get; init; }

    public required double? FreezingLevelAglM { get; init; }

    public required double? DensityAltitudeM { get; init; }

    public required IReadOnlyList<WindJson> Winds { get; init; }

    public required IReadOnlyList<HazardJson> Cautions { get; init; }

    public required IReadOnlyList<string> NotKnown { get; init; }

    public required string Advice { get; init; }

    /// <summary>What page and PDF say of how to fly the day, per group and class; null without usable thermals, and in what is
    /// signed or just made.</summary>
    public TechniqueJson? Technique { get; init; }

    public required AnalysisJson Analysis { get; init; }

    /// <summary>The brief with its technique, which takes seconds to compute.</summary>
    public static BriefJson WithTechnique(MadeBrief made, TechniqueDesk desk, CancellationToken stopping) =>
        Of(made) with { Technique = TechniqueJson.Now(made.Brief, Reader.Of(made.Brief.Site).Figures, desk, stopping) };

    public static BriefJson Of(MadeBrief made)
    {
        var (brief, reader) = (made.Brief, Reader.Of(made.Brief.Site));
        return new()
        {
            Id = made.Id,
            Site = SiteJson.Of(brief.Site),
            Date = brief.Date,
            PreparedBy = brief.PreparedBy,
            PreparedAt = brief.PreparedAt,
            Demonstration = made.Inputs.Demonstration,
            Sentence = DaySentence.Of(made, reader),
            Standing = StandingJson.Of(made.Standing),
            ReplacedBy = made.Standing?.ReplacedBy?.BriefId,
            Figures = FiguresJson.Of(DayFigures.Of(made)),
            Judgement = made.Inputs.Judgement,
            Notes = made.Inputs.Notes,
            InstructorNote = made.Inputs.InstructorNote,
            DayLimits = made.Inputs.DayLimits,
            RunwayInUse = made.Inputs.RunwayInUse,
            ValidUntil = DayFigures.ValidUntil(made),
            Ascent = AscentJson.Of(made),
            AscentUsed = AscentUsedJson.Of(made),
            NotUsed = UnusedJson.Of(made, reader),
            Day = DayJson.Of(brief.Day),
            ConvectiveTemperatureC = Json.Rounded(brief.Ascent.ConvectiveCondensation?.ConvectiveTemperature.Celsius, 2),
            FreezingLevelAglM = Json.Rounded(brief.FreezingLevel?.Metres, 0),
            DensityAltitudeM = Json.Rounded(brief.DensityAltitude?.Metres, 0),
            Winds = [.. WindTable.Rows(brief, reader).Select(WindJson.Of)],
            Cautions = [.. Hazards.Of(brief).Select(hazard => new HazardJson(Choice.NameOf(hazard.Kind), HazardText.Of(hazard, brief.Site, reader), hazard.From, hazard.To) { Serious = CautionTable.IsSerious(hazard) })],
            NotKnown = [.. Unknowns.Of(made, reader)],
            Advice = Briefs.Advice.Standing,
            Analysis = AnalysisJson.Of(brief.Ascent),
        };
    }
}

internal sealed record AscentJson(string SoundingId, string? Station, DateTimeOffset? ValidAt, double? AgeHours, double? DistanceKm)
{
    public static AscentJson Of(MadeBrief made) => new(
        made.Inputs.SoundingId,
        made.Brief.Ascent.Sounding.Source.Station,
        made.Brief.AscentValidAt,
        Json.Rounded(made.Brief.AscentAgeAt(made.Brief.PreparedAt)?.TotalHours, 1),
        Json.Rounded(made.Brief.AscentDistanceKm, 0));
}

internal sealed record WindJson(double? HeightAglM, double? DirectionDeg, double? SpeedKt)
{
    public static WindJson Of(WindRow row) => new(
        Json.Rounded(row.Height.Metres, 0), Json.Rounded(row.Wind?.FromDegrees, 0), Json.Rounded(row.Wind?.Speed.Knots, 1));
}

internal sealed record HazardJson(string Code, string Text, DateTimeOffset? From, DateTimeOffset? To)
{
    /// <summary>It ends flying, or an accident is likely.</summary>
    public bool Serious { get; init; }
}
