using System.Collections.Concurrent;
using Microsoft.Extensions.Logging;

namespace DayBrief.Service;

/// <summary>Keeps what is logged, so that tests can read what the service prints.</summary>
internal sealed class KeptLog : ILoggerProvider
{
    private readonly ConcurrentQueue<string> _lines = new();

    public IReadOnlyList<string> Lines => [.. _lines];

    public ILogger CreateLogger(string categoryName) => new Logger(_lines);

    public void Dispose()
    {
    }

    private sealed class Logger(ConcurrentQueue<string> lines) : ILogger
    {
        public IDisposable? BeginScope<TState>(TState state)
            where TState : notnull => null;

        public bool IsEnabled(LogLevel logLevel) => true;

        public void Log<TState>(LogLevel logLevel, EventId eventId, TState state, Exception? exception, Func<TState, Exception?, string> formatter) =>
            lines.Enqueue(exception is null ? formatter(state, exception) : $"{formatter(state, exception)}\n{exception}");
    }
}
