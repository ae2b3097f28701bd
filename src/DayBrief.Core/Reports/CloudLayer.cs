using DayBrief.Units;

namespace DayBrief.Reports;

/// <summary>How much of the sky a layer covers.</summary>
public enum CloudAmount
{
    /// <summary>Not observed (///).</summary>
    NotKnown,

    /// <summary>1 to 2 oktas.</summary>
    Few,

    /// <summary>3 to 4 oktas.</summary>
    Scattered,

    /// <summary>5 to 7 oktas.</summary>
    Broken,

    /// <summary>8 oktas.</summary>
    Overcast,

    /// <summary>No cloud at all (SKC, CLR).</summary>
    Clear,

    /// <summary>Nil significant cloud (NSC): none below 5,000 ft or the highest minimum sector altitude, no CB or TCU.</summary>
    NilSignificant,

    /// <summary>No cloud detected by an automatic station (NCD).</summary>
    NoneDetected,
}

/// <summary>Cloud that thermals should be wary of.</summary>
public enum ConvectiveCloud
{
    /// <summary>Towering cumulus.</summary>
    ToweringCumulus,

    /// <summary>Cumulonimbus.</summary>
    Cumulonimbus,
}

/// <summary>One cloud group.</summary>
/// <param name="Amount">How much.</param>
/// <param name="Base">Base above the aerodrome; null where not given.</param>
/// <param name="Convective">Towering cumulus or cumulonimbus, where said.</param>
public readonly record struct CloudLayer(CloudAmount Amount, Height? Base, ConvectiveCloud? Convective);
