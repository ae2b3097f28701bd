namespace DayBrief.Days;

/// <summary>What a hazard does to people, should it come.</summary>
public enum Harm
{
    /// <summary>Discomfort.</summary>
    Discomfort = 1,

    /// <summary>Damage, a slight injury, a landing out.</summary>
    Damage,

    /// <summary>An accident.</summary>
    Accident,

    /// <summary>Deaths.</summary>
    Death,
}

/// <summary>How likely a hazard meets somebody on a day that gives cause for it.</summary>
public enum Chance
{
    /// <summary>Seldom.</summary>
    Seldom = 1,

    /// <summary>Possible.</summary>
    Possible,

    /// <summary>Likely.</summary>
    Likely,

    /// <summary>Reported, or stated by a figure that is known.</summary>
    Stated,
}

/// <summary>Harm and chance: what a day's cautions are put in order by. Never shown as a figure.</summary>
/// <remarks>Two grades of four steps and their product are how risks are commonly put in order; the grades of each kind stand
/// in <see cref="CautionTable"/>. Common practice, no source.</remarks>
/// <param name="Harm">What it does.</param>
/// <param name="Chance">How likely.</param>
public readonly record struct Risk(Harm Harm, Chance Chance)
{
    private const int SeriousFrom = 9;

    /// <summary>Harm times chance.</summary>
    public int Product => (int)Harm * (int)Chance;

    /// <summary>An accident or worse, and likely.</summary>
    public bool IsSerious => Harm >= Harm.Accident && Product >= SeriousFrom;
}
