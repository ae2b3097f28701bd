using DayBrief.Service.Languages;

namespace DayBrief.Service.Features.Automation;

/// <summary>Names of jobs and states for people.</summary>
internal static class JobText
{
    public static string Of(AutomationJob job, Language language) => job switch
    {
        AutomationJob.Sounding => language["Fetch the ascent"],
        AutomationJob.DropFolder => language["Take files from the folder"],
        AutomationJob.Reports => language["Fetch METAR and TAF"],
        AutomationJob.Draft => language["Prepare the draft"],
        AutomationJob.Reminder => language["Remind to sign"],
        AutomationJob.Backup => language["Back up"],
        AutomationJob.Purge => language["Remove what is old"],
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    public static string Of(RunState state, Language language) => state switch
    {
        RunState.Running => language["under way"],
        RunState.Done => language["done"],
        RunState.Waiting => language["failed, will be tried again"],
        RunState.Failed => language["failed"],
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
