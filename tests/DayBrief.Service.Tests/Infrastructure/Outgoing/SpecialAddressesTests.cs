using System.Net;

namespace DayBrief.Service.Infrastructure.Outgoing;

/// <summary>[RFC6890] and the IANA IPv4 and IPv6 Special-Purpose Address Registries.</summary>
public sealed class SpecialAddressesTests
{
    /// <summary>Every row of both registries with its column "Globally Reachable", as fetched from IANA on 2026-07-18, read in a
    /// public copy that gives both tables whole and compared with a second public copy generated from them; IANA's own pages could
    /// not be read. The last column is ours: never public where the registry does not say True.</summary>
    [Theory]
    [InlineData("0.0.0.0/8", "\"This network\", RFC 791", "False", "Nobody")]
    [InlineData("10.0.0.0/8", "Private-Use, RFC 1918", "False", "OwnNetwork")]
    [InlineData("100.64.0.0/10", "Shared Address Space, RFC 6598", "False", "OwnNetwork")]
    [InlineData("127.0.0.0/8", "Loopback, RFC 1122", "False", "OwnNetwork")]
    [InlineData("169.254.0.0/16", "Link Local, RFC 3927", "False", "OwnNetwork")]
    [InlineData("172.16.0.0/12", "Private-Use, RFC 1918", "False", "OwnNetwork")]
    [InlineData("192.0.0.0/24", "IETF Protocol Assignments, RFC 6890", "False", "Nobody")]
    [InlineData("192.0.0.0/29", "IPv4 Service Continuity Prefix, RFC 7335", "False", "Nobody")]
    [InlineData("192.0.0.8/32", "IPv4 dummy address, RFC 7600", "False", "Nobody")]
    [InlineData("192.0.0.9/32", "Port Control Protocol Anycast, RFC 7723", "True", "Nobody")]
    [InlineData("192.0.0.10/32", "Traversal Using Relays around NAT Anycast, RFC 8155", "True", "Nobody")]
    [InlineData("192.0.0.170/31", "NAT64/DNS64 Discovery, RFC 7050 (two rows)", "False", "Nobody")]
    [InlineData("192.0.2.0/24", "Documentation (TEST-NET-1), RFC 5737", "False", "Nobody")]
    [InlineData("192.31.196.0/24", "AS112-v4, RFC 7535", "True", "Public")]
    [InlineData("192.52.193.0/24", "AMT, RFC 7450", "True", "Public")]
    [InlineData("192.88.99.0/24", "Deprecated (6to4 Relay Anycast), RFC 7526", "", "Nobody")]
    [InlineData("192.88.99.2/32", "6a44-relay anycast address, RFC 6751", "False", "Nobody")]
    [InlineData("192.168.0.0/16", "Private-Use, RFC 1918", "False", "OwnNetwork")]
    [InlineData("192.175.48.0/24", "Direct Delegation AS112 Service, RFC 7534", "True", "Public")]
    [InlineData("198.18.0.0/15", "Benchmarking, RFC 2544", "False", "Nobody")]
    [InlineData("198.51.100.0/24", "Documentation (TEST-NET-2), RFC 5737", "False", "Nobody")]
    [InlineData("203.0.113.0/24", "Documentation (TEST-NET-3), RFC 5737", "False", "Nobody")]
    [InlineData("240.0.0.0/4", "Reserved, RFC 1112", "False", "Nobody")]
    [InlineData("255.255.255.255/32", "Limited Broadcast, RFC 919", "False", "Nobody")]
    [InlineData("::1/128", "Loopback Address, RFC 4291", "False", "OwnNetwork")]
    [InlineData("::/128", "Unspecified Address, RFC 4291", "False", "Nobody")]
    [InlineData("::ffff:0:0/96", "IPv4-mapped Address, RFC 4291: first and last are those of IPv4", "False", "Nobody")]
    [InlineData("64:ff9b::/96", "IPv4-IPv6 Translat., RFC 6052: first and last are those of IPv4", "True", "Nobody")]
    [InlineData("64:ff9b:1::/48", "IPv4-IPv6 Translat., RFC 8215", "False", "Nobody")]
    [InlineData("100::/64", "Discard-Only Address Block, RFC 6666", "False", "Nobody")]
    [InlineData("100:0:0:1::/64", "Dummy IPv6 Prefix, RFC 9780", "False", "Nobody")]
    [InlineData("2001::/23", "IETF Protocol Assignments, RFC 2928", "False", "Nobody")]
    [InlineData("2001::/32", "TEREDO, RFC 4380", "N/A", "Nobody")]
    [InlineData("2001:1::1/128", "Port Control Protocol Anycast, RFC 7723", "True", "Nobody")]
    [InlineData("2001:1::2/128", "Traversal Using Relays around NAT Anycast, RFC 8155", "True", "Nobody")]
    [InlineData("2001:1::3/128", "DNS-SD Service Registration Protocol Anycast, RFC 9665", "True", "Nobody")]
    [InlineData("2001:2::/48", "Benchmarking, RFC 5180", "False", "Nobody")]
    [InlineData("2001:3::/32", "AMT, RFC 7450", "True", "Nobody")]
    [InlineData("2001:4:112::/48", "AS112-v6, RFC 7535", "True", "Nobody")]
    [InlineData("2001:10::/28", "Deprecated (previously ORCHID), RFC 4843", "", "Nobody")]
    [InlineData("2001:20::/28", "ORCHIDv2, RFC 7343", "True", "Nobody")]
    [InlineData("2001:30::/28", "Drone Remote ID Protocol Entity Tags (DETs) Prefix, RFC 9374", "True", "Nobody")]
    [InlineData("2001:db8::/32", "Documentation, RFC 3849", "False", "Nobody")]
    [InlineData("2002::/16", "6to4, RFC 3056", "N/A", "Nobody")]
    [InlineData("2620:4f:8000::/48", "Direct Delegation AS112 Service, RFC 7534", "True", "Public")]
    [InlineData("3fff::/20", "Documentation, RFC 9637", "False", "Nobody")]
    [InlineData("5f00::/16", "Segment Routing (SRv6) SIDs, RFC 9602", "False", "Nobody")]
    [InlineData("fc00::/7", "Unique-Local, RFC 4193", "False", "OwnNetwork")]
    [InlineData("fe80::/10", "Link-Local Unicast, RFC 4291", "False", "OwnNetwork")]
    public void Every_block_of_the_registries_is_refused_unless_hosts_are_reached_there(string block, string name, string globallyReachable, string reach)
    {
        var network = IPNetwork.Parse(block);
        Assert.All([network.BaseAddress, LastOf(network)], address => Assert.True(SpecialAddresses.ReachOf(address) == Enum.Parse<Reach>(reach), name));
        Assert.True(reach != nameof(Reach.Public) || globallyReachable == "True", name);
    }

    /// <summary>What the registries leave to others: multicast RFC 5771 and RFC 4291, site-local RFC 3879.</summary>
    [Theory]
    [InlineData("224.0.0.0/4", "Nobody")]
    [InlineData("ff00::/8", "Nobody")]
    [InlineData("fec0::/10", "OwnNetwork")]
    [InlineData("4000::/3", "Nobody")]
    public void Blocks_of_other_standards_are_refused_too(string block, string reach)
    {
        var network = IPNetwork.Parse(block);
        Assert.All([network.BaseAddress, LastOf(network)], address => Assert.Equal(Enum.Parse<Reach>(reach), SpecialAddresses.ReachOf(address)));
    }

    [Theory]
    [InlineData("10.0.0.0", "private-use")]
    [InlineData("10.255.255.255", "private-use")]
    [InlineData("100.64.0.1", "shared address space, RFC 6598")]
    [InlineData("100.127.255.255", "shared address space")]
    [InlineData("127.0.0.1", "loopback")]
    [InlineData("127.255.255.254", "loopback")]
    [InlineData("169.254.0.1", "link-local")]
    [InlineData("169.254.169.254", "link-local, where clouds tell their secrets")]
    [InlineData("172.16.0.1", "private-use")]
    [InlineData("172.31.255.255", "private-use")]
    [InlineData("192.168.0.1", "private-use")]
    [InlineData("192.168.255.255", "private-use")]
    [InlineData("::1", "loopback")]
    [InlineData("fc00::1", "unique-local, RFC 4193")]
    [InlineData("fdff:ffff::1", "unique-local")]
    [InlineData("fe80::1", "link-local")]
    [InlineData("febf::1", "link-local")]
    [InlineData("fec0::1", "site-local, deprecated")]
    [InlineData("::ffff:127.0.0.1", "IPv4-mapped loopback")]
    [InlineData("::ffff:10.1.2.3", "IPv4-mapped private-use")]
    [InlineData("64:ff9b::7f00:1", "NAT64 of loopback")]
    [InlineData("64:ff9b::c0a8:101", "NAT64 of 192.168.1.1")]
    public void The_own_network_is_known_as_such(string address, string why) =>
        Assert.True(SpecialAddresses.ReachOf(IPAddress.Parse(address)) == Reach.OwnNetwork, why);

    [Theory]
    [InlineData("0.0.0.0", "this host: a connection to it reaches loopback")]
    [InlineData("0.1.2.3", "this network")]
    [InlineData("192.0.0.1", "IETF protocol assignments")]
    [InlineData("192.0.2.1", "documentation")]
    [InlineData("192.88.99.1", "6to4 relay, deprecated")]
    [InlineData("198.18.0.1", "benchmarking")]
    [InlineData("198.19.255.255", "benchmarking")]
    [InlineData("198.51.100.1", "documentation")]
    [InlineData("203.0.113.1", "documentation")]
    [InlineData("224.0.0.1", "multicast")]
    [InlineData("239.255.255.255", "multicast")]
    [InlineData("240.0.0.1", "reserved")]
    [InlineData("255.255.255.255", "limited broadcast")]
    [InlineData("::", "unspecified")]
    [InlineData("::ffff:0.0.0.0", "IPv4-mapped unspecified")]
    [InlineData("::7f00:1", "IPv4-compatible, deprecated")]
    [InlineData("64:ff9b:1::1", "local NAT64")]
    [InlineData("100::1", "discard-only")]
    [InlineData("2001::1", "Teredo")]
    [InlineData("2001:2::1", "benchmarking")]
    [InlineData("2001:10::1", "ORCHID, deprecated")]
    [InlineData("2001:db8::1", "documentation")]
    [InlineData("3fff::1", "documentation")]
    [InlineData("5f00::1", "segment routing")]
    [InlineData("ff02::1", "multicast")]
    [InlineData("64:ff9b:1::808:808", "local NAT64, of a public address")]
    [InlineData("2002:808:808::1", "6to4 of a public address: not called reachable")]
    [InlineData("2002:7f00:1::1", "6to4 of loopback")]
    [InlineData("64:ff9b::e000:1", "NAT64 of multicast")]
    public void What_is_no_single_host_is_reached_by_nobody(string address, string why) =>
        Assert.True(SpecialAddresses.ReachOf(IPAddress.Parse(address)) == Reach.Nobody, why);

    /// <summary>The neighbours of the blocks, and blocks that the registries call globally reachable.</summary>
    [Theory]
    [InlineData("9.255.255.255")]
    [InlineData("11.0.0.0")]
    [InlineData("100.63.255.255")]
    [InlineData("100.128.0.0")]
    [InlineData("126.255.255.255")]
    [InlineData("128.0.0.0")]
    [InlineData("169.253.255.255")]
    [InlineData("172.15.255.255")]
    [InlineData("172.32.0.0")]
    [InlineData("192.167.255.255")]
    [InlineData("192.169.0.0")]
    [InlineData("198.17.255.255")]
    [InlineData("198.20.0.0")]
    [InlineData("223.255.255.255")]
    [InlineData("192.31.196.1")]
    [InlineData("192.52.193.1")]
    [InlineData("192.175.48.1")]
    [InlineData("2620:4f:8000::1")]
    [InlineData("2001:200::1")]
    [InlineData("2a00::1")]
    [InlineData("::ffff:8.8.8.8")]
    [InlineData("64:ff9b::808:808")]
    public void Hosts_on_the_internet_are_public(string address) =>
        Assert.Equal(Reach.Public, SpecialAddresses.ReachOf(IPAddress.Parse(address)));

    private static IPAddress LastOf(IPNetwork network)
    {
        var bytes = network.BaseAddress.GetAddressBytes();
        for (var bit = network.PrefixLength; bit < bytes.Length * 8; bit++)
            bytes[bit / 8] |= (byte)(0x80 >> (bit % 8));
        return new(bytes);
    }
}
