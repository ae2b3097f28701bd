using DayBrief.Texts;

namespace DayBrief.Logs;

/// <summary>Something about a log that its reader should know; nothing is passed over unsaid.</summary>
/// <param name="Code">For programs.</param>
/// <param name="Message">For people.</param>
/// <param name="Count">How often.</param>
public sealed record LogRemark(string Code, Words Message, int Count = 1);
