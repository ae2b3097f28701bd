namespace DayBrief.Service.Features.Automation;

/// <summary>What is done by itself, in the order in which jobs due together begin.</summary>
internal enum AutomationJob
{
    /// <summary>Fetch the ascent from its address.</summary>
    Sounding,

    /// <summary>Take the ascents laid into the site's folder.</summary>
    DropFolder,

    /// <summary>Fetch METAR and TAF, and compare the day with them.</summary>
    Reports,

    /// <summary>Prepare the day's draft.</summary>
    Draft,

    /// <summary>Remind when the day's brief is not signed.</summary>
    Reminder,

    /// <summary>Copy the store and the published files.</summary>
    Backup,

    /// <summary>Remove what is too old to keep.</summary>
    Purge,
}
