using DayBrief.Logs;
using DayBrief.Logs.Circling;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Flights;

/// <summary>One climb of a flight.</summary>
internal sealed record FlownClimbJson
{
    public required string? Start { get; init; }

    public required string? End { get; init; }

    public required string Sense { get; init; }

    public required double? Turns { get; init; }

    public required double? DurationS { get; init; }

    public required double? GainM { get; init; }

    public required double? MeanMs { get; init; }

    public required double? Best3Ms { get; init; }

    public required double? PeriodS { get; init; }

    public required double? RadiusM { get; init; }

    public required double? BankDeg { get; init; }

    public required double? AirspeedMs { get; init; }

    public required FlownWindJson Wind { get; init; }

    public required double? FitResidualMs { get; init; }

    public required IReadOnlyList<FlownTurnJson> TurnList { get; init; }

    public static FlownClimbJson Of(FlightLog log, FlownClimb climb) => new()
    {
        Start = FlightJson.Time(log, climb.StartS),
        End = FlightJson.Time(log, climb.EndS),
        Sense = climb.ToTheRight ? "right" : "left",
        Turns = Json.Rounded(climb.Turns, 2),
        DurationS = Json.Rounded(climb.DurationS, 0),
        GainM = Json.Rounded(climb.GainM, 0),
        MeanMs = Json.Rounded(climb.MeanMs, 3),
        Best3Ms = Json.Rounded(climb.Best3Ms, 3),
        PeriodS = Json.Rounded(climb.PeriodS, 2),
        RadiusM = Json.Rounded(climb.RadiusM, 1),
        BankDeg = Json.Rounded(climb.BankDeg, 1),
        AirspeedMs = Json.Rounded(climb.AirspeedMs, 2),
        Wind = new(Json.Rounded(climb.Wind.FromDegrees, 0), Json.Rounded(climb.Wind.Speed.MetresPerSecond, 2)),
        FitResidualMs = Json.Rounded(climb.ResidualMs, 2),
        TurnList = [.. climb.TurnList.Select(turn => new FlownTurnJson(
            Json.Rounded(turn.PeriodS, 2), Json.Rounded(turn.ClimbMs, 3), Json.Rounded(turn.RadiusM, 1), Json.Rounded(turn.BankDeg, 1), Json.Rounded(turn.SwingMs, 3)))],
    };
}

internal sealed record FlownWindJson(double? FromDeg, double? SpeedMs);

internal sealed record FlownTurnJson(double? PeriodS, double? ClimbMs, double? RadiusM, double? BankDeg, double? SwingMs);
