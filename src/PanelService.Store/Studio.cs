using System.Data;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;
using Microsoft.Extensions.Logging;
using PanelService.Store.Faults;
using PanelService.Store.Model;

namespace PanelService.Store;

/// <summary>
/// The studio's memory: opens the database, brings it up to date, and runs what reads and what writes. Writes follow one
/// another, over all processes: SQLite by its own lock (BEGIN IMMEDIATE), PostgreSQL by an advisory lock that ends with the
/// transaction. So every check that a write makes still holds when it commits.
/// </summary>
public sealed partial class Studio : IDisposable
{
    // An arbitrary number that all our hosts agree on.
    private const long WriterLock = 0x50414E454C;

    private readonly Contexts _contexts;
    private readonly Opening _opening;
    private readonly ILogger<Studio> _log;
    private readonly SemaphoreSlim _writing = new(1, 1);

    /// <summary>Opens nothing yet.</summary>
    /// <param name="options">Where it is kept.</param>
    /// <param name="log">Told of every fault.</param>
    public Studio(StoreOptions options, ILogger<Studio> log)
    {
        ArgumentNullException.ThrowIfNull(options);
        _log = log;
        _contexts = new Contexts(options);
        _opening = new Opening(options, _contexts);
        Options = options;
    }

    /// <summary>Where it is kept.</summary>
    public StoreOptions Options { get; }

    /// <summary>Opens the database, creates it where there is none, and brings it up to date.</summary>
    /// <param name="cancellation">Gives up waiting.</param>
    /// <exception cref="StoreUnavailableException">It cannot be used; asked for again, this tries again.</exception>
    public Task OpenAsync(CancellationToken cancellation = default) => GuardAsync(() => _opening.EnsureAsync(cancellation));

    /// <inheritdoc/>
    public void Dispose()
    {
        _opening.Dispose();
        _writing.Dispose();
    }

    /// <summary>Runs what only reads; all of it sees one moment.</summary>
    internal Task<T> ReadAsync<T>(Func<StudioContext, Task<T>> work, CancellationToken cancellation) => GuardAsync(async () =>
    {
        await _opening.EnsureAsync(cancellation);
        await using StudioContext context = _contexts.Create();
        context.ChangeTracker.QueryTrackingBehavior = QueryTrackingBehavior.NoTracking;
        await using IDbContextTransaction transaction = await BeginReadAsync(context, cancellation);
        return await work(context);
    });

    /// <summary>Runs what writes, in one transaction: all of it or, where it throws or refuses, nothing.</summary>
    internal Task<T> WriteAsync<T>(Func<StudioContext, Task<T>> work, CancellationToken cancellation) => GuardAsync(async () =>
    {
        await _opening.EnsureAsync(cancellation);
        await _writing.WaitAsync(cancellation);
        try
        {
            return await InTransactionAsync(work, cancellation);
        }
        finally
        {
            _writing.Release();
        }
    });

    private async Task<T> InTransactionAsync<T>(Func<StudioContext, Task<T>> work, CancellationToken cancellation)
    {
        await using StudioContext context = _contexts.Create();
        await using IDbContextTransaction transaction = await context.Database.BeginTransactionAsync(cancellation);
        if (Options.UsesPostgres)
        {
            await context.Database.ExecuteSqlAsync($"SELECT pg_advisory_xact_lock({WriterLock})", cancellation);
        }

        T result = await work(context);
        if (result is not IRefusal)
        {
            await context.SaveChangesAsync(cancellation);

            // Not to be called off half-way: whoever asked must be able to trust the answer.
            await transaction.CommitAsync(CancellationToken.None);
        }

        return result;
    }

    private static async Task<IDbContextTransaction> BeginReadAsync(StudioContext context, CancellationToken cancellation)
    {
        if (context is not SqliteStudioContext)
        {
            return await context.Database.BeginTransactionAsync(IsolationLevel.RepeatableRead, cancellation);
        }

        // Deferred: a reader takes no lock, and sees the moment of its first query.
        await context.Database.OpenConnectionAsync(cancellation);
        var connection = (SqliteConnection)context.Database.GetDbConnection();
        return (await context.Database.UseTransactionAsync(connection.BeginTransaction(deferred: true), cancellation))!;
    }

    private async Task GuardAsync(Func<Task> work) => await GuardAsync(async () =>
    {
        await work();
        return true;
    });

    private async Task<T> GuardAsync<T>(Func<Task<T>> work)
    {
        try
        {
            return await work();
        }
        catch (Exception fault) when (FaultReader.Read(fault) is { } found)
        {
            Unavailable(_log, found.Fault, found.Message, (found.InnerException ?? fault).Message);
            throw found;
        }
    }

    [LoggerMessage(Level = LogLevel.Error, Message = "The studio's memory cannot be used ({Fault}): {Message} It was said: {Said}")]
    private static partial void Unavailable(ILogger log, StoreFault fault, string message, string said);
}
