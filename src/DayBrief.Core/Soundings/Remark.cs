using DayBrief.Texts;
using DayBrief.Units;

namespace DayBrief.Soundings;

/// <summary>How much a remark matters. What is worse than a warning is refused: <see cref="InvalidSoundingException"/>.</summary>
public enum Severity
{
    /// <summary>Good to know.</summary>
    Info,

    /// <summary>Look at it before you rely on the result.</summary>
    Warning,
}

/// <summary>One finding about an ascent.</summary>
/// <param name="Severity">How much it matters.</param>
/// <param name="Code">Stable name for programs, such as "superadiabatic-layer".</param>
/// <param name="Words">What is wrong, where, and what was done or should be done; one sentence or two.</param>
/// <param name="Level">The level it is about, if it is about one.</param>
public sealed record Remark(Severity Severity, string Code, Words Words, Pressure? Level = null)
{
    /// <summary>It is a question to whoever gave the ascent: the value is used as it stands, but hardly anywhere is it so.</summary>
    public bool Asks { get; init; }

    /// <summary>It says that something of the input was not used.</summary>
    public bool LeavesOut => LeftOut.Codes.Contains(Code);

    /// <summary>The words in English.</summary>
    public string Message => Words.ToString();
}
