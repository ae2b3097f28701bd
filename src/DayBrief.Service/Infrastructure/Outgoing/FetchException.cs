using System.Globalization;

namespace DayBrief.Service.Infrastructure.Outgoing;

/// <summary>Why an address gave nothing.</summary>
internal enum FetchFault
{
    /// <summary>The address is not http or https, or steps down from https.</summary>
    Scheme,

    /// <summary>It holds a user name or password.</summary>
    Credentials,

    /// <summary>The port belongs to another protocol.</summary>
    Port,

    /// <summary>It leads into the own network, or to nobody.</summary>
    Refused,

    /// <summary>More redirects than allowed, or one to nowhere.</summary>
    Redirects,

    /// <summary>The name is not known.</summary>
    Name,

    /// <summary>No connection, or not a secure one.</summary>
    Connection,

    /// <summary>The server answered with an error.</summary>
    Status,

    /// <summary>Too slow.</summary>
    TimeOut,

    /// <summary>Too much.</summary>
    Size,

    /// <summary>The answer broke off or cannot be unpacked.</summary>
    Broken,
}

/// <summary>An address gave nothing; what, where, and whether asking again may help.</summary>
internal sealed class FetchException(FetchFault fault, string about, bool mayPass, TimeSpan? retryAfter = null, Exception? cause = null)
    : Exception(string.Create(CultureInfo.InvariantCulture, $"{fault}: {about}"), cause)
{
    public FetchFault Fault => fault;

    /// <summary>Host, port, address or status it is about.</summary>
    public string About => about;

    /// <summary>Asking again in a moment may help.</summary>
    public bool MayPass => mayPass;

    /// <summary>What the server asked for.</summary>
    public TimeSpan? RetryAfter => retryAfter;

    /// <summary>Nothing but another address or setting helps.</summary>
    public bool IsRefusal => fault is FetchFault.Scheme or FetchFault.Credentials or FetchFault.Port or FetchFault.Refused;
}
