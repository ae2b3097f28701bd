namespace DayBrief.Service.Charts;

/// <summary>The few tones of a drawing. Meaning never rests on them: lines, hatching and words carry it.</summary>
internal enum Ink
{
    /// <summary>Main lines and text.</summary>
    Black,

    /// <summary>Axes, secondary text.</summary>
    Grey,

    /// <summary>Fine grid lines.</summary>
    Faint,

    /// <summary>The one quiet accent.</summary>
    Accent,

    /// <summary>Only where there is a cause for caution.</summary>
    Warning,

    /// <summary>The paper itself, to clear what lies beneath.</summary>
    Paper,
}
