using System.Globalization;
using System.Net;
using System.Net.Sockets;

namespace DayBrief.Service.Infrastructure.Outgoing;

/// <summary>Keeps fetches out of the host's own network: looks at each address, resolves its name once and connects to the
/// very address that it has looked at.</summary>
internal sealed class AddressGuard(AllowedHosts allowed, Func<string, CancellationToken, Task<IPAddress[]>>? resolve = null)
{
    /// <summary>Ports of other protocols, on which an HTTP request could do harm.</summary>
    /// <remarks>The list of the WHATWG Fetch standard, "port blocking", read in a stored copy of its text; that copy lacks 0, 989, 990,
    /// 4190, 6679 and 10080, which are from memory.</remarks>
    private static readonly HashSet<int> Blocked =
    [
        0, 1, 7, 9, 11, 13, 15, 17, 19, 20, 21, 22, 23, 25, 37, 42, 43, 53, 69, 77, 79, 87, 95, 101, 102, 103, 104, 109, 110, 111, 113, 115,
        117, 119, 123, 135, 137, 139, 143, 161, 179, 389, 427, 465, 512, 513, 514, 515, 526, 530, 531, 532, 540, 548, 554, 556, 563, 587,
        601, 636, 989, 990, 993, 995, 1719, 1720, 1723, 2049, 3659, 4045, 4190, 5060, 5061, 6000, 6566, 6665, 6666, 6667, 6668, 6669, 6679,
        6697, 10080,
    ];

    private readonly Func<string, CancellationToken, Task<IPAddress[]>> _resolve = resolve ?? Dns.GetHostAddressesAsync;

    /// <summary>Looks at an address before anything is sent.</summary>
    /// <exception cref="FetchException">It is refused.</exception>
    public void Check(Uri address)
    {
        if (address.Scheme != Uri.UriSchemeHttp && address.Scheme != Uri.UriSchemeHttps)
            throw new FetchException(FetchFault.Scheme, address.Scheme, mayPass: false);
        if (address.UserInfo.Length > 0)
            throw new FetchException(FetchFault.Credentials, address.Host, mayPass: false);
        if (Blocked.Contains(address.Port) && !allowed.AllowPort(address.IdnHost, address.Port))
            throw new FetchException(FetchFault.Port, address.Port.ToString(CultureInfo.InvariantCulture), mayPass: false);
        if (IPAddress.TryParse(address.IdnHost, out var literal))
            Check(address.IdnHost, address.Port, literal);
    }

    /// <summary>Connects for a client that has <see cref="SocketsHttpHandler.ConnectCallback"/>.</summary>
    public async ValueTask<Stream> ConnectAsync(SocketsHttpConnectionContext context, CancellationToken stopping)
    {
        var (host, port) = (context.DnsEndPoint.Host, context.DnsEndPoint.Port);
        var addresses = IPAddress.TryParse(host.Trim('[', ']'), out var literal) ? [literal] : await ResolveAsync(host, stopping);
        // One bad address spoils the name: whoever mixes them has something in mind.
        foreach (var address in addresses)
            Check(host, port, address);
        return await ConnectAsync(host, port, addresses, stopping);
    }

    private void Check(string host, int port, IPAddress address)
    {
        var reach = SpecialAddresses.ReachOf(address);
        if (reach == Reach.Nobody || (reach == Reach.OwnNetwork && !allowed.Allow(host, port)))
            throw new FetchException(FetchFault.Refused, host == address.ToString() ? host : $"{host} ({address})", mayPass: false);
    }

    private async Task<IPAddress[]> ResolveAsync(string host, CancellationToken stopping)
    {
        try
        {
            var addresses = await _resolve(host, stopping);
            return addresses.Length > 0 ? addresses : throw new FetchException(FetchFault.Name, host, mayPass: true);
        }
        catch (SocketException unknown)
        {
            throw new FetchException(FetchFault.Name, host, mayPass: true, cause: unknown);
        }
    }

    private static async Task<Stream> ConnectAsync(string host, int port, IPAddress[] addresses, CancellationToken stopping)
    {
        SocketException? last = null;
        foreach (var address in addresses)
        {
            var socket = new Socket(address.AddressFamily, SocketType.Stream, ProtocolType.Tcp) { NoDelay = true };
            try
            {
                await socket.ConnectAsync(new IPEndPoint(address, port), stopping);
                return new NetworkStream(socket, ownsSocket: true);
            }
            catch (SocketException failed)
            {
                socket.Dispose();
                last = failed;
            }
            catch
            {
                socket.Dispose();
                throw;
            }
        }

        throw new FetchException(FetchFault.Connection, host, mayPass: true, cause: last);
    }
}
