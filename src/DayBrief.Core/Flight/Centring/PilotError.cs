namespace DayBrief.Flight.Centring;

/// <summary>Errors people make; each is flown on its own against the clean way.</summary>
public enum PilotError
{
    /// <summary>None.</summary>
    None,

    /// <summary>Arrives 7.5 kt too fast and loses it slowly (time constant 12 s).</summary>
    FastEntry,

    /// <summary>Begins every turn and correction 1.6 s late.</summary>
    Late,

    /// <summary>Corrects after a third of a turn instead of a full one, and at every swing however small.</summary>
    ChasingTheNeedle,

    /// <summary>Rolls half as fast and lets the bank wander by 3° (root mean square) more.</summary>
    SloppyRoll,
}
