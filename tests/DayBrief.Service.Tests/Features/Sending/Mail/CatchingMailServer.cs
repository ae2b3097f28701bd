using System.Buffers;
using System.Collections.Concurrent;
using System.Net;
using System.Net.Sockets;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using MimeKit;
using SmtpServer;
using SmtpServer.Authentication;
using SmtpServer.ComponentModel;
using SmtpServer.Protocol;
using SmtpServer.Storage;

namespace DayBrief.Service.Features.Sending.Mail;

/// <summary>A real SMTP server on loopback (package SmtpServer) that keeps what it takes, and answers as a test wants.</summary>
internal sealed class CatchingMailServer : MessageStore, IAsyncDisposable
{
    public const string User = "brief";
    public const string Password = "not a real password";

    private readonly CancellationTokenSource _stop = new();
    private readonly ConcurrentQueue<Caught> _caught = new();
    private readonly Func<int, SmtpResponse> _answer;
    private readonly Task _running;
    private int _offered;

    /// <param name="answer">What is answered to the first, second … message offered; all are taken otherwise.</param>
    /// <param name="certificate">STARTTLS is offered, and demanded with user and password.</param>
    /// <param name="port">Where, when the test needs to know before.</param>
    public CatchingMailServer(Func<int, SmtpResponse>? answer = null, X509Certificate2? certificate = null, int? port = null)
    {
        _answer = answer ?? (_ => SmtpResponse.Ok);
        Port = port ?? FreePort();
        var options = new SmtpServerOptionsBuilder().ServerName("catcher.example").Endpoint(endpoint =>
        {
            endpoint.Endpoint(new IPEndPoint(IPAddress.Loopback, Port));
            if (certificate is not null)
                endpoint.Certificate(certificate).AuthenticationRequired();
        }).Build();
        var services = new ServiceProvider();
        services.Add((IMessageStore)this);
        services.Add(new DelegatingUserAuthenticator((_, user, password) => user == User && password == Password));
        _running = new global::SmtpServer.SmtpServer(options, services).StartAsync(_stop.Token);
    }

    public int Port { get; }

    public IReadOnlyList<Caught> Messages => [.. _caught];

    public int Offered => _offered;

    public static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    /// <summary>A certificate that no authority knows.</summary>
    public static X509Certificate2 SelfMade()
    {
        using var key = RSA.Create(2048);
        var request = new CertificateRequest("CN=mail.field.example", key, HashAlgorithmName.SHA256, RSASignaturePadding.Pkcs1);
        using var made = request.CreateSelfSigned(new(2020, 1, 1, 0, 0, 0, TimeSpan.Zero), new(2090, 1, 1, 0, 0, 0, TimeSpan.Zero));
        return X509CertificateLoader.LoadPkcs12(made.Export(X509ContentType.Pkcs12), null);
    }

    public override Task<SmtpResponse> SaveAsync(ISessionContext context, IMessageTransaction transaction, ReadOnlySequence<byte> buffer, CancellationToken cancellationToken)
    {
        var answer = _answer(Interlocked.Increment(ref _offered));
        if (answer.ReplyCode == SmtpReplyCode.Ok)
            _caught.Enqueue(new(buffer.ToArray(), [.. transaction.To.Select(to => $"{to.User}@{to.Host}")], context.Pipe.IsSecure));
        return Task.FromResult(answer);
    }

    public async ValueTask DisposeAsync()
    {
        await _stop.CancelAsync();
        try
        {
            await _running;
        }
        catch (OperationCanceledException)
        {
            // That is how it stops.
        }

        _stop.Dispose();
    }

    /// <summary>A message as it came over the wire.</summary>
    internal sealed record Caught(byte[] Bytes, IReadOnlyList<string> Envelope, bool Secure)
    {
        public MimeMessage Message { get; } = MimeMessage.Load(new MemoryStream(Bytes));

        /// <summary>The lines before the first empty one.</summary>
        public string[] Head { get; } = System.Text.Encoding.UTF8.GetString(Bytes).Split("\r\n\r\n")[0].Split("\r\n");
    }
}
