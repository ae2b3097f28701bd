using DayBrief.Service.Languages;
using DayBrief.Units;

namespace DayBrief.Service.Charts;

/// <summary>What the plan of centring shows: seen from above, moving with the air, metres and degrees of turn.</summary>
internal sealed record CirclePlanInput
{
    /// <summary>Lines of equal lift round the core, in any order; the widest is the edge of the lift.</summary>
    public required IReadOnlyList<LiftContour> Contours { get; init; }

    /// <summary>Radius of the glider's circle.</summary>
    public required double CircleRadiusM { get; init; }

    /// <summary>Distance of its centre from the core before the move.</summary>
    public required double OffsetM { get; init; }

    /// <summary>Turn from the truly weakest air to where the pilot knows of it (instrument and display).</summary>
    public required double LagDeg { get; init; }

    /// <summary>Turn from there to the beginning of the roll-out.</summary>
    public required double RollOutAfterDeg { get; init; }

    /// <summary>Further turn while rolling level: half of what a roll takes at full rate of turn.</summary>
    public double HalfRollDeg { get; init; }

    /// <summary>How far the centre moves: the straight stretch with half of each roll.</summary>
    public required double ShiftM { get; init; }

    /// <summary>Seconds of the lag, of the wait before rolling out and wings level, where the labels shall say them.</summary>
    public (double Lag, double Wait, double Level)? Seconds { get; init; }

    /// <summary>Updraft in the core.</summary>
    public double? CoreMs { get; init; }

    public bool TurnsRight { get; init; }

    /// <summary>Wind at the height, with north up; null leaves the arrow out.</summary>
    public Wind? Wind { get; init; }

    public HeightUnit Unit { get; init; }

    public Language Language { get; init; } = Language.English;

    public Figures In => new(Unit, Language);

    public double Width { get; init; } = TextStyle.PhoneWidth;

    /// <summary>Turn from the weakest air to the heading flown straight.</summary>
    public double StraightAfterDeg => LagDeg + RollOutAfterDeg + HalfRollDeg;
}

/// <summary>A line of equal lift.</summary>
/// <param name="RadiusM">Its radius.</param>
/// <param name="UpdraftMs">The air's vertical speed on it.</param>
internal sealed record LiftContour(double RadiusM, double UpdraftMs);
