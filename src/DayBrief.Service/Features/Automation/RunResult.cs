namespace DayBrief.Service.Features.Automation;

/// <summary>How a run ended: a code and its figures, worded by <see cref="RunText"/> in the reader's language.</summary>
internal sealed record RunResult(RunCode Code, params IReadOnlyList<string> Figures);

/// <summary>Ends of runs.</summary>
internal enum RunCode
{
    /// <summary>Ascent kept: station, time, origin.</summary>
    SoundingKept,

    /// <summary>The very ascent that was there already: origin.</summary>
    SoundingKnown,

    /// <summary>An ascent older than the one wanted: its time, the wanted.</summary>
    SoundingOld,

    /// <summary>The content is no ascent: why.</summary>
    ContentRefused,

    /// <summary>Files of the folder: taken, refused.</summary>
    FilesTaken,

    /// <summary>Draft prepared.</summary>
    DraftMade,

    /// <summary>The day has a draft or a brief already.</summary>
    DraftThere,

    /// <summary>No ascent for the day yet.</summary>
    NoSounding,

    /// <summary>The day cannot be computed: why.</summary>
    DayRefused,

    /// <summary>Reminder raised.</summary>
    Reminded,

    /// <summary>Signed in time.</summary>
    Signed,

    /// <summary>New reports, flags.</summary>
    ReportsKept,

    /// <summary>Nothing readable for the station came.</summary>
    NoReports,

    /// <summary>An address gave nothing: fault, what about.</summary>
    FetchFailed,

    /// <summary>Backup written: file, bytes.</summary>
    BackedUp,

    /// <summary>Removed: drafts, ascents, reports, runs.</summary>
    Purged,

    /// <summary>Our own mistake, or the disk's: what it said.</summary>
    Broken,

    /// <summary>The site or its setting is no longer there.</summary>
    NothingToDo,
}

/// <summary>A run that did not do what it should; perhaps a later one does.</summary>
internal sealed class RunFailedException(RunResult result, bool mayPass = true, TimeSpan? retryAfter = null, Exception? cause = null)
    : Exception(result.Code.ToString(), cause)
{
    public RunResult Result => result;

    public bool MayPass => mayPass;

    public TimeSpan? RetryAfter => retryAfter;
}
