using Microsoft.Extensions.Logging;

namespace PanelService.Store.Tests.Hosts;

/// <summary>A log that remembers its lines.</summary>
/// <typeparam name="T">Whose log it is.</typeparam>
internal sealed class LoggedLines<T> : ILogger<T>
{
    internal List<string> Lines { get; } = [];

    /// <inheritdoc/>
    public IDisposable? BeginScope<TState>(TState state)
        where TState : notnull => null;

    /// <inheritdoc/>
    public bool IsEnabled(LogLevel logLevel) => true;

    /// <inheritdoc/>
    public void Log<TState>(LogLevel logLevel, EventId eventId, TState state, Exception? exception, Func<TState, Exception?, string> formatter)
    {
        lock (Lines)
        {
            Lines.Add($"{logLevel}: {formatter(state, exception)}");
        }
    }
}
