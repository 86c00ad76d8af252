using System.Collections.Concurrent;
using Microsoft.Extensions.Logging;

namespace CoachOffice.Web.Tests.Watching;

/// <summary>Everything that passes the office's own filters, with the values that structured logs write apart.</summary>
internal sealed class KeptLog : ILoggerProvider, ILogger
{
    private readonly ConcurrentQueue<string> _lines = new();

    public IReadOnlyList<string> Lines => [.. _lines];

    public ILogger CreateLogger(string categoryName) => this;

    public IDisposable? BeginScope<TState>(TState state)
        where TState : notnull => null;

    public bool IsEnabled(LogLevel logLevel) => true;

    public void Log<TState>(LogLevel logLevel, EventId eventId, TState state, Exception? exception, Func<TState, Exception?, string> formatter)
    {
        var values = state is IReadOnlyList<KeyValuePair<string, object?>> pairs ? string.Join(' ', pairs.Select(p => $"{p.Key}={p.Value}")) : "";
        _lines.Enqueue($"{formatter(state, exception)} {values} {exception}");
    }

    public void Dispose()
    {
    }
}
