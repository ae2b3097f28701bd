using System.Net.Security;
using System.Net.Sockets;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using DayBrief.Service.Features.Sending.Deliveries;
using MailKit;
using MailKit.Net.Smtp;
using MailKit.Security;
using MimeKit;

namespace DayBrief.Service.Features.Sending.Mail;

/// <summary>The mails of one run over one connection, made with the first.</summary>
internal sealed class SmtpSession(MailServer server) : IAsyncDisposable
{
    private static readonly TimeSpan Slowest = TimeSpan.FromSeconds(30);

    private SmtpClient? _client;

    /// <summary>The server could not be reached in this run: the other mails need not wait for the same.</summary>
    private SendFailedException? _unreachable;

    /// <returns>What the server said to it.</returns>
    /// <exception cref="SendFailedException">The server has not taken it, or has not said so.</exception>
    public async Task<string> SendAsync(string address, Func<MailboxAddress, Task<MimeMessage>> write, CancellationToken stopping)
    {
        if (server is not { Host: { } host, From: { } from })
            throw new SendFailedException(SendFault.NoMailServer, null, mayPass: false);
        if (_unreachable is not null)
            throw _unreachable;
        using var message = await write(from);
        using var slow = CancellationTokenSource.CreateLinkedTokenSource(stopping);
        slow.CancelAfter(2 * Slowest);
        try
        {
            var client = await ConnectedAsync(host, slow.Token);
            return OneLine(await client.SendAsync(message, from, [MailboxAddress.Parse(address)], slow.Token));
        }
        catch (Exception failed) when (!stopping.IsCancellationRequested && Failure(failed, host) is { } told)
        {
            if (failed is not SmtpCommandException)
                Close();
            throw told;
        }
    }

    public async ValueTask DisposeAsync()
    {
        if (_client is { IsConnected: true })
        {
            try
            {
                using var slow = new CancellationTokenSource(TimeSpan.FromSeconds(5));
                await _client.DisconnectAsync(quit: true, slow.Token);
            }
            catch (Exception gone) when (Failure(gone, "") is not null)
            {
                // Everything has been said; how the server takes leave does not matter.
            }
        }

        Close();
    }

    private async Task<SmtpClient> ConnectedAsync(string host, CancellationToken stopping)
    {
        if (_client is { IsConnected: true } connected)
            return connected;
        Close();
        _client = new SmtpClient { Timeout = (int)Slowest.TotalMilliseconds, CheckCertificateRevocation = false, ServerCertificateValidationCallback = IsTrusted };
        try
        {
            await _client.ConnectAsync(host, server.Port, server.Security, stopping);
            if (server.User is { Length: > 0 } user)
                await _client.AuthenticateAsync(user, server.Password ?? "", stopping);
            return _client;
        }
        catch (Exception failed) when (Failure(failed, host) is { } told)
        {
            _unreachable = told;
            throw;
        }
    }

    /// <summary>What it means; null for what is no failure of the other side.</summary>
    private static SendFailedException? Failure(Exception failed, string host) => failed switch
    {
        SmtpCommandException refused => new(SendFault.Answer, $"{(int)refused.StatusCode} {OneLine(refused.Message)}", mayPass: (int)refused.StatusCode < 500, cause: refused),
        SslHandshakeException or NotSupportedException => new(SendFault.NotSecure, host, cause: failed),
        AuthenticationException or ServiceNotAuthenticatedException => new(SendFault.SignIn, host, cause: failed),
        OperationCanceledException or TimeoutException => new(SendFault.TimeOut, host, cause: failed),
        ProtocolException or ServiceNotConnectedException or IOException or SocketException => new(SendFault.Connection, host, cause: failed),
        _ => null,
    };

    private static string OneLine(string answer)
    {
        var line = Notices.NoticeText.Line(answer);
        return line.Length > 200 ? line[..200] : line;
    }

    private bool IsTrusted(object sender, X509Certificate? certificate, X509Chain? chain, SslPolicyErrors errors) =>
        errors == SslPolicyErrors.None
        || (certificate is not null && server.CertificateSha256 is { } known
            && string.Equals(certificate.GetCertHashString(HashAlgorithmName.SHA256), known, StringComparison.OrdinalIgnoreCase));

    private void Close()
    {
        _client?.Dispose();
        _client = null;
    }
}
