namespace DayBrief.Service.Features.People;

/// <summary>The one-time link with which the first administrator is made: printed at the start of a service without people.</summary>
internal sealed class SetUpLink(PersonStore people, TimeProvider clock, ILogger<SetUpLink> log)
{
    private static readonly TimeSpan Lasts = TimeSpan.FromHours(24);

    private static readonly Action<ILogger, string, Exception?> Printed = LoggerMessage.Define<string>(
        LogLevel.Warning, default, "Nobody can sign in yet. Open this link within 24 hours to make the first administrator; it works once: {Link}");

    private string? _hash;
    private DateTimeOffset _until;

    /// <summary>Prints the link, made anew; nothing once there is somebody.</summary>
    public void Announce(IEnumerable<string> addresses)
    {
        if (people.Any() || addresses.FirstOrDefault() is not { } address)
            return;
        var token = Secret.New();
        (_hash, _until) = (Secret.Hash(token), clock.GetUtcNow() + Lasts);
        Printed(log, $"{Reachable(address)}/set-up?token={token}", null);
    }

    public bool Opens(string? token) => token is not null && clock.GetUtcNow() < _until && Secret.Matches(token, _hash) && !people.Any();

    public void Close() => _hash = null;

    /// <summary>A service that listens everywhere is reached at the machine by its usual name.</summary>
    private static string Reachable(string address)
    {
        foreach (var everywhere in (string[])["//[::]", "//0.0.0.0", "//+", "//*"])
            address = address.Replace(everywhere, "//localhost", StringComparison.Ordinal);
        return address.TrimEnd('/');
    }
}
