using System.Net;
using System.Net.Sockets;

namespace DayBrief.Service.Infrastructure.Outgoing;

/// <summary>Who may be reached under an address.</summary>
internal enum Reach
{
    /// <summary>Anybody on the internet.</summary>
    Public,

    /// <summary>This host or its own networks: only when an administrator allows the host.</summary>
    OwnNetwork,

    /// <summary>No single host that anything could be fetched from: never.</summary>
    Nobody,
}

/// <summary>Addresses that are not those of a host on the internet.</summary>
/// <remarks>Every block that the IANA IPv4 and IPv6 Special-Purpose Address Registries [RFC6890] do not call globally reachable;
/// multicast (RFC 5771, RFC 4291), site-local (RFC 3879, deprecated) and what lies outside global unicast 2000::/3 (RFC 4291), such
/// as 64:ff9b:1::/48, 100::/64, 5f00::/16 and IPv4-compatible ::/96, are refused too. Stricter than the registries: the few
/// reachable blocks inside 192.0.0.0/24 and 2001::/23 serve protocols, not files, and stay refused.</remarks>
internal static class SpecialAddresses
{
    private static readonly (IPNetwork Block, Reach Reach)[] Blocks =
    [
        .. Of(Reach.OwnNetwork, "10.0.0.0/8", "100.64.0.0/10", "127.0.0.0/8", "169.254.0.0/16", "172.16.0.0/12", "192.168.0.0/16"),
        .. Of(Reach.OwnNetwork, "::1/128", "fc00::/7", "fe80::/10", "fec0::/10"),
        .. Of(Reach.Nobody, "0.0.0.0/8", "192.0.0.0/24", "192.0.2.0/24", "192.88.99.0/24", "198.18.0.0/15", "198.51.100.0/24", "203.0.113.0/24", "224.0.0.0/4", "240.0.0.0/4"),
        .. Of(Reach.Nobody, "2001::/23", "2001:db8::/32", "2002::/16", "3fff::/20"),
    ];

    private static readonly IPNetwork GlobalUnicast = IPNetwork.Parse("2000::/3");
    private static readonly IPNetwork Translated = IPNetwork.Parse("64:ff9b::/96");

    /// <summary>An IPv4 address inside an IPv6 one (mapped, or the global prefix of NAT64, RFC 6052) counts as itself.</summary>
    public static Reach ReachOf(IPAddress address)
    {
        if (Inner(address) is { } inner)
            return ReachOf(inner);
        foreach (var (block, reach) in Blocks)
        {
            if (block.BaseAddress.AddressFamily == address.AddressFamily && block.Contains(address))
                return reach;
        }

        return address.AddressFamily == AddressFamily.InterNetwork || GlobalUnicast.Contains(address) ? Reach.Public : Reach.Nobody;
    }

    private static IPAddress? Inner(IPAddress address) =>
        address.IsIPv4MappedToIPv6 ? address.MapToIPv4()
        : address.AddressFamily == AddressFamily.InterNetworkV6 && Translated.Contains(address) ? new(address.GetAddressBytes().AsSpan(12, 4))
        : null;

    private static IEnumerable<(IPNetwork Block, Reach Reach)> Of(Reach reach, params string[] blocks) =>
        blocks.Select(block => (IPNetwork.Parse(block), reach));
}
