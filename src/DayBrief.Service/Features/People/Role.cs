namespace DayBrief.Service.Features.People;

/// <summary>What a person may do; each role may do what the ones before it may.</summary>
public enum Role
{
    /// <summary>Reads briefs.</summary>
    Reader,

    /// <summary>Prepares, signs, amends and withdraws briefs.</summary>
    Instructor,

    /// <summary>Manages sites, people and keys.</summary>
    Administrator,
}
