namespace DayBrief.Days;

/// <summary>How much a pilot has flown, which decides how much advice says and how far it goes.</summary>
public enum Experience
{
    /// <summary>Before the first solo: with an instructor.</summary>
    BeforeSolo,

    /// <summary>Solo near the field.</summary>
    LocalSolo,

    /// <summary>Flies cross-country.</summary>
    CrossCountry,
}

/// <summary>One value for each experience group.</summary>
/// <param name="BeforeSolo">With an instructor, before the first solo.</param>
/// <param name="LocalSolo">Solo near the field.</param>
/// <param name="CrossCountry">Cross-country.</param>
public sealed record ByExperience<T>(T BeforeSolo, T LocalSolo, T CrossCountry)
{
    /// <summary>The group's.</summary>
    public T For(Experience experience) => experience switch
    {
        Experience.BeforeSolo => BeforeSolo,
        Experience.LocalSolo => LocalSolo,
        _ => CrossCountry,
    };
}
