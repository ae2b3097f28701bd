using DayBrief.Days;

namespace DayBrief.Service.Features.Briefs;

/// <summary>A brief, what it was made of and the id it is kept under (null when it is not kept).</summary>
internal sealed record MadeBrief(string? Id, BriefInputs Inputs, Brief Brief);
