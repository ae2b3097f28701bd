namespace DayBrief.Flight.Centring;

/// <summary>Ways of centring a thermal.</summary>
/// <remarks>The first turn begins when the lift, by the seat, has stopped rising. Turning on the surge does not wait for that, and the ways
/// that correct begin as whichever of the two is better on the day.</remarks>
public enum CentringWay
{
    /// <summary>Hold the first circle, without correction.</summary>
    Hold,

    /// <summary>Turn at once when the lift is felt, and hold.</summary>
    TurnOnSurge,

    /// <summary>Hold; if the first turn finds less than the entry did, level the wings after 270° and turn the same way again.</summary>
    LevelAfter270,

    /// <summary>After the worst reading level the wings for some seconds, then the same turn again.</summary>
    StraightenAndShift,

    /// <summary>At the best reading tighten by up to 10°, hold that, and ease out over half a turn.</summary>
    TightenAndEase,

    /// <summary>Hold; if the first turn finds less than the entry did, turn the other way.</summary>
    Reverse,

    /// <summary>A large swing: straighten for as long as the swing says; a small one: tighten and ease.</summary>
    BySwing,
}

/// <summary>Names of the ways in requests and results.</summary>
public static class CentringWays
{
    /// <summary>All ways, the simplest to fly first: of ways that cannot be told apart the first is given.</summary>
    public static IReadOnlyList<CentringWay> SimplestFirst { get; } = Enum.GetValues<CentringWay>();

    /// <summary>The way's name, such as <c>straighten-and-shift</c>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No such way.</exception>
    public static string NameOf(CentringWay way) => way switch
    {
        CentringWay.Hold => "hold",
        CentringWay.TurnOnSurge => "turn-on-surge",
        CentringWay.LevelAfter270 => "level-after-270",
        CentringWay.StraightenAndShift => "straighten-and-shift",
        CentringWay.TightenAndEase => "tighten-and-ease",
        CentringWay.Reverse => "reverse",
        CentringWay.BySwing => "by-swing",
        _ => throw new ArgumentOutOfRangeException(nameof(way), way, "No such way."),
    };
}
