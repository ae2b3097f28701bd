namespace DayBrief.Service.Infrastructure;

/// <summary>What is asked for is kept, and is not given because it cannot be believed.</summary>
internal abstract class WithheldException(string message) : Exception(message)
{
    /// <summary>Why, for its reader.</summary>
    public abstract ProblemError Error { get; }
}
