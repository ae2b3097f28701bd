using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Languages;

namespace DayBrief.Service.Features.Automation.Status;

/// <summary>What follows from a signature, in words.</summary>
internal static class FollowerText
{
    public static string Of(Follower follower, Language language) => follower switch
    {
        Follower.Phones => language["Open pages are told"],
        Follower.Files => language["Plain files are written"],
        Follower.Flags => language["The day's reports are compared"],
        Follower.Sending => language["Mail and webhooks are set going"],
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    public static string StateOf(OutboxEntry entry, Language language) => entry switch
    {
        { IsDone: true } => language["done [state of what follows]"],
        { Fault: { } fault } => language.Say($"has not worked, and is tried again: {fault}"),
        _ => language["waits"],
    };
}
