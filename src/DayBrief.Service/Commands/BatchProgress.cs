using System.Diagnostics;
using System.Globalization;

namespace DayBrief.Service.Commands;

/// <summary>Progress with rate and time left, on standard error where that is a terminal.</summary>
internal sealed class BatchProgress(int total) : IAsyncDisposable
{
    private static readonly TimeSpan Every = TimeSpan.FromSeconds(0.5);

    private readonly bool _shown = !Console.IsErrorRedirected && total > 1;
    private readonly Stopwatch _running = Stopwatch.StartNew();
    private TimeSpan _told;
    private int _done;

    public void Step()
    {
        _done++;
        if (_shown && _running.Elapsed - _told >= Every)
        {
            _told = _running.Elapsed;
            var rate = _done / _running.Elapsed.TotalSeconds;
            var left = TimeSpan.FromSeconds((total - _done) / rate);
            Console.Error.Write(string.Create(CultureInfo.InvariantCulture, $"\r{_done} of {total}, {rate:0} a second, {left:hh\\:mm\\:ss} left  "));
        }
    }

    /// <summary>Clears the line before something else is written.</summary>
    public void Clear()
    {
        if (_shown && _told > TimeSpan.Zero)
            Console.Error.Write("\r\u001b[K");
    }

    public ValueTask DisposeAsync()
    {
        Clear();
        return ValueTask.CompletedTask;
    }
}
