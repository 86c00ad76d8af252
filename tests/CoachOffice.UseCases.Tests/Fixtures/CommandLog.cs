using System.Collections.Concurrent;
using Microsoft.EntityFrameworkCore.Diagnostics;
using Microsoft.Extensions.Logging;

namespace CoachOffice.UseCases.Tests.Fixtures;

/// <summary>Writes down every statement that reaches the database. Register it as an <see cref="ILoggerProvider"/>.</summary>
public sealed class CommandLog : ILoggerProvider, ILogger
{
    private readonly ConcurrentQueue<string> _statements = new();

    public IReadOnlyList<string> Statements => [.. _statements];

    public ILogger CreateLogger(string categoryName) => this;

    public IDisposable? BeginScope<TState>(TState state)
        where TState : notnull => null;

    public bool IsEnabled(LogLevel logLevel) => logLevel >= LogLevel.Information;

    public void Log<TState>(LogLevel logLevel, EventId eventId, TState state, Exception? exception, Func<TState, Exception?, string> formatter)
    {
        if (eventId.Id == RelationalEventId.CommandExecuted.Id) _statements.Enqueue(formatter(state, exception));
    }

    public void Dispose()
    {
    }
}
