using System.Collections.Immutable;
using DayBrief.Units;

namespace DayBrief.Logs.Circling;

/// <summary>One climb of at least three turns in one sense.</summary>
public sealed record FlownClimb
{
    /// <summary>Begin, seconds since the log's first midnight.</summary>
    public required double StartS { get; init; }

    /// <summary>End, the same.</summary>
    public required double EndS { get; init; }

    /// <summary>Whether it circles to the right.</summary>
    public required bool ToTheRight { get; init; }

    /// <summary>Turns over the ground, with their fraction.</summary>
    public required double Turns { get; init; }

    /// <summary>Height at the begin and at the end, as <see cref="FlightLog.HeightFrom"/> says, m.</summary>
    public required (double From, double To) HeightM { get; init; }

    /// <summary>Drift of the air while circling.</summary>
    public required Wind Wind { get; init; }

    /// <summary>True airspeed of the fitted circle, m/s.</summary>
    public required double AirspeedMs { get; init; }

    /// <summary>Root mean square distance of the ground velocities from the fitted circle, m/s.</summary>
    public required double ResidualMs { get; init; }

    /// <summary>The full turns, of heading through the air.</summary>
    public required ImmutableArray<FlownTurn> TurnList { get; init; }

    /// <summary>How long it lasted, s.</summary>
    public double DurationS => EndS - StartS;

    /// <summary>Height won, m.</summary>
    public double GainM => HeightM.To - HeightM.From;

    /// <summary>Mean climb, m/s.</summary>
    public double MeanMs => GainM / DurationS;

    /// <summary>Mean time of a full turn, s.</summary>
    public double PeriodS => TurnList.Average(turn => turn.PeriodS);

    /// <summary>Radius in the air's frame, m.</summary>
    public double RadiusM => TurnList.Average(turn => turn.RadiusM);

    /// <summary>Bank, degrees.</summary>
    public double BankDeg => TurnList.Average(turn => turn.BankDeg);

    /// <summary>Best mean of three turns running, m/s; null in a climb of fewer than six turns.</summary>
    public double? Best3Ms => TurnList.Length < 6
        ? null
        : Enumerable.Range(0, TurnList.Length - 2).Max(i => (TurnList[i].ClimbMs + TurnList[i + 1].ClimbMs + TurnList[i + 2].ClimbMs) / 3);
}
