using System.Net;
using System.Net.Sockets;
using System.Text;

namespace DayBrief.Service.Features.Sending.Mail;

/// <summary>Speaks just enough SMTP to hang up where a polite server would not.</summary>
internal sealed class RudeMailServer : IAsyncDisposable
{
    private readonly TcpListener _listener = new(IPAddress.Loopback, 0);
    private readonly CancellationTokenSource _stop = new();
    private readonly bool _greets;
    private readonly int _lostAnswers;
    private readonly Task _running;

    /// <param name="greets">Says hello before it hangs up.</param>
    /// <param name="lostAnswers">So many messages it takes and hangs up before it says so; the next it takes politely.</param>
    public RudeMailServer(bool greets = true, int lostAnswers = int.MaxValue)
    {
        (_greets, _lostAnswers) = (greets, lostAnswers);
        _listener.Start();
        _running = ServeAsync();
    }

    public int Port => ((IPEndPoint)_listener.LocalEndpoint).Port;

    public List<string> Taken { get; } = [];

    public async ValueTask DisposeAsync()
    {
        await _stop.CancelAsync();
        _listener.Dispose();
        try
        {
            await _running;
        }
        catch (Exception stopped) when (stopped is OperationCanceledException or SocketException or ObjectDisposedException)
        {
            // That is how it stops.
        }

        _stop.Dispose();
    }

    private async Task ServeAsync()
    {
        while (!_stop.IsCancellationRequested)
        {
            using var client = await _listener.AcceptTcpClientAsync(_stop.Token);
            if (!_greets)
                continue;
            try
            {
                await TalkAsync(client.GetStream());
            }
            catch (IOException)
            {
                // The other side went first.
            }
        }
    }

    private async Task TalkAsync(Stream stream)
    {
        using var reader = new StreamReader(stream, Encoding.UTF8);
        await using var writer = new StreamWriter(stream, new UTF8Encoding(false)) { NewLine = "\r\n", AutoFlush = true };
        await writer.WriteLineAsync("220 rude.example");
        while (await reader.ReadLineAsync(_stop.Token) is { } line)
        {
            if (line != "DATA")
            {
                await writer.WriteLineAsync(line == "QUIT" ? "221 bye" : "250 ok");
                continue;
            }

            await writer.WriteLineAsync("354 go on");
            var message = new StringBuilder();
            while (await reader.ReadLineAsync(_stop.Token) is { } part && part != ".")
                message.AppendLine(part);
            Taken.Add(message.ToString());
            if (Taken.Count <= _lostAnswers)
                return;
            await writer.WriteLineAsync("250 taken");
        }
    }
}
