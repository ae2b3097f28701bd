namespace DayBrief.Service.Features.People;

/// <summary>What an API key may do; each scope may do what the ones before it may.</summary>
public enum KeyScope
{
    /// <summary>Send soundings and prepare briefs; nothing that readers see as signed.</summary>
    Prepare,

    /// <summary>Sign, amend and withdraw as well.</summary>
    Sign,

    /// <summary>All that an administrator may.</summary>
    Administer,
}
