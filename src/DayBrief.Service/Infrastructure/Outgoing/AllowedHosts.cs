using System.Globalization;

namespace DayBrief.Service.Infrastructure.Outgoing;

/// <summary>Hosts in the own network that the administrator lets be fetched from: "weather.lan" or, with one port only,
/// "weather.lan:8080", "[fd00::7]:8080".</summary>
internal sealed class AllowedHosts
{
    /// <summary>Settings DayBrief__Fetch__AllowedHosts__0, __1 …</summary>
    public const string Section = "DayBrief:Fetch:AllowedHosts";

    private readonly HashSet<(string Host, int? Port)> _allowed = [];

    public AllowedHosts(IEnumerable<string> entries)
    {
        foreach (var entry in entries)
            _allowed.Add(Parse(entry.Trim()));
    }

    public static AllowedHosts Of(IConfiguration configuration) =>
        new(configuration.GetSection(Section).Get<string[]>() ?? []);

    public bool Allow(string host, int port) =>
        _allowed.Contains((Bare(host), port)) || _allowed.Contains((Bare(host), null));

    /// <summary>The administrator named this very port.</summary>
    public bool AllowPort(string host, int port) => _allowed.Contains((Bare(host), port));

    private static (string, int?) Parse(string entry)
    {
        var colon = entry.LastIndexOf(':');
        var hasPort = colon > entry.LastIndexOf(']') && (entry.StartsWith('[') || entry.IndexOf(':') == colon);
        if (!hasPort)
            return (Bare(entry), null);
        return int.TryParse(entry.AsSpan(colon + 1), NumberStyles.None, CultureInfo.InvariantCulture, out var port) && port is > 0 and < 65536
            ? (Bare(entry[..colon]), port)
            : throw new UnusableSettingException($"{Section}: \"{entry}\" is not a host or host:port.");
    }

    private static string Bare(string host) => host.Trim('[', ']').TrimEnd('.').ToLowerInvariant();
}
