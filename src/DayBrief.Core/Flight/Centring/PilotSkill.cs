using DayBrief.Flight.Instruments;

namespace DayBrief.Flight.Centring;

/// <summary>How well a pilot does what is advised: reaction, accuracy, and how well the own instrument is known.</summary>
/// <param name="ExtraDelayS">Reaction beyond the display's own delay, s.</param>
/// <param name="BankScatterDeg">Bank held against bank meant, from encounter to encounter, degrees (root mean square).</param>
/// <param name="BankWanderDeg">Bank from moment to moment, degrees (root mean square).</param>
/// <param name="SpeedScatterMs">Speed held against speed meant, m/s (root mean square).</param>
/// <param name="PlaceScatterDeg">Where in the turn the weakest or strongest is believed to be against where the reading has it, degrees (root mean square), on an instrument that
/// shows the whole swing.</param>
/// <param name="LagMisjudged">Share of the own instrument's lag by which a pilot is wrong about it (root mean square): what a slow instrument costs.</param>
/// <param name="ObserveDeg">How long a circle is watched before something is done about it, degrees of turn.</param>
/// <remarks>The practised pilot was set once on the given half of the flight recordings, which are competition pilots. The other two are
/// assumed (no source): the recordings cannot tell of beginners.</remarks>
public sealed record PilotSkill(
    double ExtraDelayS, double BankScatterDeg, double BankWanderDeg, double SpeedScatterMs, double PlaceScatterDeg, double LagMisjudged, double ObserveDeg)
{
    /// <summary>Flies cross-country: as the recordings show.</summary>
    public static PilotSkill Practised { get; } = new(0, 3, 3, 1, 20, 0.75, 240);

    /// <summary>Solo near the field.</summary>
    public static PilotSkill Solo { get; } = new(0.4, 4, 4, 1.5, 30, 1, 360);

    /// <summary>Before the first solo.</summary>
    public static PilotSkill Learning { get; } = new(0.8, 5, 5, 2, 40, 1.3, 360);

    /// <summary>No error of any kind: for what the formulas say.</summary>
    public static PilotSkill Perfect { get; } = new(0, 0, 0, 0, 0, 0, 360);

    /// <summary>How well corrections are placed in the turn, degrees (root mean square): the flatter an instrument shows the swing, the less sure
    /// its weakest point, and a lag that is not known in full adds its share.</summary>
    internal double PlacedWithinDeg(Variometer instrument, double periodS)
    {
        var (seen, lag) = (PlaceScatterDeg / instrument.Gain(periodS), LagMisjudged * instrument.LagDeg(periodS));
        return Math.Sqrt((seen * seen) + (lag * lag));
    }
}
