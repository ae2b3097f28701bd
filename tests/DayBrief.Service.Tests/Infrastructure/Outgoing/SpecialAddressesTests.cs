using System.Net;

namespace DayBrief.Service.Infrastructure.Outgoing;

/// <summary>[RFC6890] and the IANA IPv4 and IPv6 Special-Purpose Address Registries (columns "Address Block" and "Globally
/// Reachable"; from memory of the registries as of 2024): first, some inner and the last address of each block.</summary>
public sealed class SpecialAddressesTests
{
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
    [InlineData("2002:7f00:1::1", "6to4 of loopback")]
    [InlineData("2002:a00:1::1", "6to4 of 10.0.0.1")]
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
}
