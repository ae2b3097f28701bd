using DayBrief.Flight.Centring;
using DayBrief.Flight.Gliders;
using DayBrief.Flight.Thermals;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Centring;

/// <summary>A study of centring as the outside contract names it.</summary>
internal sealed record CentringJson
{
    public required MetThermalJson Thermal { get; init; }

    public required CircleJson Circle { get; init; }

    public required OptimumJson Optimum { get; init; }

    public required InstrumentJson Instrument { get; init; }

    public required RollOutJson RollOut { get; init; }

    public required RollOutJson SimulatedRollOut { get; init; }

    public required IReadOnlyList<SwingJson> Swing { get; init; }

    public required IReadOnlyList<WayJson> Ranking { get; init; }

    public required IReadOnlyList<string> Tied { get; init; }

    public required string Recommended { get; init; }

    public required IReadOnlyList<EntryCostJson> EntryCosts { get; init; }

    public required int Encounters { get; init; }

    public required long Seed { get; init; }

    public static CentringJson Of(CentringResult result) => new()
    {
        Thermal = MetThermalJson.Of(result.Thermal),
        Circle = CircleJson.Of(result.Circle),
        Optimum = OptimumJson.Of(result.Optimum),
        Instrument = new(Json.Rounded(result.LagS, 3), Json.Rounded(result.LagDeg, 2), result.Instrument.LagS),
        RollOut = RollOutJson.Of(result.RollOut),
        SimulatedRollOut = RollOutJson.Of(result.SimulatedRollOut),
        Swing = [.. result.Swing.Rows.Select(SwingJson.Of)],
        Ranking = [.. result.Ranking.Select(WayJson.Of)],
        Tied = [.. result.Tied.Select(CentringWays.NameOf)],
        Recommended = CentringWays.NameOf(result.Recommended),
        EntryCosts = [.. result.EntryCosts.Select(cost => new EntryCostJson(
            cost.What, Json.Rounded(cost.RadiusGrowthM, 1), Json.Rounded(cost.CentredClimbLostMs, 3), EstimateJson.Of(cost.Climb3MinLostMs)))],
        Encounters = result.Encounters,
        Seed = result.Seed,
    };
}

/// <summary>The thermal that was flown in, with what follows from it.</summary>
internal sealed record MetThermalJson(string Kind, double? CoreUpdraftMs, double? RadiusM, double? DepthM, double? HeightM, double? LiftSlopeMsPer100M)
{
    /// <summary>Where gliders circle, m from the core: for this distance the slope is given.</summary>
    private const double CircledAtM = 108;

    public static MetThermalJson Of(Thermal thermal) => new(
        Choice.NameOf(thermal.Form),
        Json.Rounded(thermal.CoreUpdraft.MetresPerSecond, 3),
        Json.Rounded(thermal.RadiusM, 1),
        Json.Rounded(thermal.Depth.Metres, 1),
        Json.Rounded(thermal.Height.Metres, 1),
        Json.Rounded(100 * thermal.At(thermal.Height).SlopePerS(CircledAtM), 3));
}

internal sealed record CircleJson(double? BankDeg, double? SpeedKt, double? RadiusM, double? PeriodS, double? SinkMs, double? StallMarginPct)
{
    public static CircleJson Of(Circle circle) => new(
        Json.Rounded(circle.BankDeg, 1),
        Json.Rounded(circle.Speed.Knots, 1),
        Json.Rounded(circle.RadiusM, 1),
        Json.Rounded(circle.PeriodS, 2),
        Json.Rounded(circle.SinkMs, 3),
        Json.Rounded(circle.StallMarginPct, 1));
}

internal sealed record OptimumJson(double? BankDeg, double? SpeedKt, double? ClimbMs, double? FlatFromDeg, double? FlatToDeg)
{
    public static OptimumJson Of(CirclingOptimum optimum) => new(
        Json.Rounded(optimum.Circle.BankDeg, 1),
        Json.Rounded(optimum.Circle.Speed.Knots, 1),
        Json.Rounded(optimum.ClimbMs, 3),
        Json.Rounded(optimum.FlatFromDeg, 1),
        Json.Rounded(optimum.FlatToDeg, 1));
}

/// <summary>Lag of the reading in this circle, and the time constant it comes from.</summary>
internal sealed record InstrumentJson(double? LagS, double? LagDeg, double TimeConstantS);

internal sealed record RollOutJson(double? AfterWorstReadingDeg, double? AfterWorstReadingS, double? LevelS)
{
    public static RollOutJson Of(RollOut rollOut) => new(
        Json.Rounded(rollOut.AfterWorstReadingDeg, 1), Json.Rounded(rollOut.AfterWorstReadingS, 2), Json.Rounded(rollOut.LevelS, 2));
}

internal sealed record SwingJson(double? OffsetM, double? StrongestMs, double? WeakestMs, double? MeanClimbMs, double? LevelS, double? ShallowS, double? TightenDeg)
{
    public static SwingJson Of(SwingRow row) => new(
        Json.Rounded(row.OffsetM, 1),
        Json.Rounded(row.StrongestMs, 3),
        Json.Rounded(row.WeakestMs, 3),
        Json.Rounded(row.MeanClimbMs, 3),
        Json.Rounded(row.LevelS, 2),
        Json.Rounded(row.ShallowS, 2),
        Json.Rounded(row.TightenDeg, 1));
}

internal sealed record EstimateJson(double? Mean, double? HalfWidth95)
{
    public static EstimateJson Of(Estimate estimate) => new(Json.Rounded(estimate.Mean, 4), Json.Rounded(estimate.HalfWidth95, 4));
}

internal sealed record WayJson(
    string Way,
    EstimateJson Climb3MinMs,
    EstimateJson Climb5MinMs,
    EstimateJson LostPct,
    double? TurnsToCentre,
    EstimateJson BehindBestMs,
    double? First3MinOverBest,
    double? FirstGoodTurn,
    IReadOnlyList<double>? TurnOverBest,
    double? LeftPct,
    double? LeftBefore2Pct,
    IReadOnlyDictionary<string, double> Parameters,
    IReadOnlyList<ErrorJson> Errors)
{
    public static WayJson Of(WayResult result) => new(
        CentringWays.NameOf(result.Way),
        EstimateJson.Of(result.Climb3MinMs),
        EstimateJson.Of(result.Climb5MinMs),
        EstimateJson.Of(result.LostPct),
        Json.Rounded(result.TurnsToCentre, 1),
        EstimateJson.Of(result.BehindBestMs),
        Json.Rounded(result.Figures.First3MinOverBest, 3),
        Json.Rounded(result.Figures.FirstGoodTurn, 1),
        result.Figures.TurnOverBest?.Select(turn => Math.Round(turn, 3)).ToArray(),
        Json.Rounded(result.Figures.LeftPct, 1),
        Json.Rounded(result.Figures.LeftBefore2Pct, 1),
        result.Parameters.ToDictionary(parameter => parameter.Key, parameter => Math.Round(parameter.Value, 3)),
        [.. result.Errors.Select(error => new ErrorJson(
            Choice.NameOf(error.Error), EstimateJson.Of(error.ClimbLostMs), EstimateJson.Of(error.LostMorePct)))]);
}

internal sealed record ErrorJson(string Error, EstimateJson ClimbLostMs, EstimateJson LostMorePct);

internal sealed record EntryCostJson(string What, double? RadiusGrowthM, double? CentredClimbLostMs, EstimateJson Climb3MinLostMs);
