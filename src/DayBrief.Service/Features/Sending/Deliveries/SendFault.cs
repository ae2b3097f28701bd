using DayBrief.Service.Languages;

namespace DayBrief.Service.Features.Sending.Deliveries;

/// <summary>Why something was not delivered.</summary>
internal enum SendFault
{
    /// <summary>The installation has no mail server.</summary>
    NoMailServer,

    /// <summary>The address leads into the own network, or to nobody.</summary>
    OwnNetwork,

    /// <summary>No connection.</summary>
    Connection,

    /// <summary>The connection is not secure: certificate, or no encryption offered.</summary>
    NotSecure,

    /// <summary>The mail server does not take user name and password.</summary>
    SignIn,

    /// <summary>The other side answered that it does not take it.</summary>
    Answer,

    /// <summary>The other side sends on to another address.</summary>
    Redirect,

    /// <summary>Too slow.</summary>
    TimeOut,

    /// <summary>The signed sheet is not there, or is not the one that was signed.</summary>
    NoSheet,

    /// <summary>The address was taken out of the site's settings.</summary>
    TakenOut,

    /// <summary>Our own mistake.</summary>
    Broken,
}

/// <summary>Faults in words.</summary>
internal static class SendFaultText
{
    public static string Of(SendFault fault, string? about, Language language) => fault switch
    {
        SendFault.NoMailServer => language["This installation has no mail server set."],
        SendFault.OwnNetwork => language.Say($"{about} lies in the own network or is no host; the administrator has not allowed it."),
        SendFault.Connection => language.Say($"No connection to {about}."),
        SendFault.NotSecure => language.Say($"No secure connection to {about}."),
        SendFault.SignIn => language["The mail server does not accept user name and password."],
        SendFault.Answer => language.Say($"The other side answered: {about}"),
        SendFault.Redirect => language.Say($"The other side points to another address, which is not followed: {about}"),
        SendFault.TimeOut => language.Say($"{about} was too slow."),
        SendFault.NoSheet => language["The signed sheet is not there as it was signed."],
        SendFault.TakenOut => language["The address was taken out of the settings."],
        SendFault.Broken => language.Say($"It broke: {about}"),
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}

/// <summary>One attempt failed; what about, and whether another may help.</summary>
internal sealed class SendFailedException(SendFault fault, string? about, bool mayPass = true, TimeSpan? retryAfter = null, Exception? cause = null)
    : Exception($"{fault}: {about}", cause)
{
    public SendFault Fault => fault;

    public string? About => about;

    public bool MayPass => mayPass;

    public TimeSpan? RetryAfter => retryAfter;
}
