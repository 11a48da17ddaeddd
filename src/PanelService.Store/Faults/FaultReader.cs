using System.Net.Sockets;
using Microsoft.Data.Sqlite;
using Npgsql;

namespace PanelService.Store.Faults;

/// <summary>What a database or a disk says, put as one of the faults a person can do something about.</summary>
internal static class FaultReader
{
    // Result codes: https://www.sqlite.org/rescode.html
    private const int SqliteBusy = 5;
    private const int SqliteLocked = 6;
    private const int SqliteReadOnly = 8;
    private const int SqliteInputOutput = 10;
    private const int SqliteCorrupt = 11;
    private const int SqliteFull = 13;
    private const int SqliteCannotOpen = 14;
    private const int SqliteNotADatabase = 26;

    /// <summary>The exception to throw instead; null where the fault is our own.</summary>
    internal static StoreUnavailableException? Read(Exception fault) => Causes(fault).Select(One).FirstOrDefault(found => found is not null);

    private static IEnumerable<Exception> Causes(Exception fault)
    {
        for (Exception? cause = fault; cause is not null; cause = cause.InnerException)
        {
            yield return cause;
        }
    }

    private static StoreUnavailableException? One(Exception cause) => cause switch
    {
        StoreUnavailableException known => known,
        SqliteException sqlite => Of(ReadSqlite(sqlite), cause),
        PostgresException postgres => Of(ReadPostgres(postgres), cause),
        NpgsqlException or SocketException => Of(StoreFault.Unreachable, cause),
        UnauthorizedAccessException => Of(StoreFault.NotWritable, cause),
        IOException => Of(StoreFault.NotWritable, cause),
        _ => null,
    };

    private static StoreFault? ReadSqlite(SqliteException fault) => fault.SqliteErrorCode switch
    {
        SqliteFull => StoreFault.Full,
        SqliteReadOnly or SqliteCannotOpen or SqliteInputOutput => StoreFault.NotWritable,
        SqliteBusy or SqliteLocked => StoreFault.Busy,
        SqliteCorrupt or SqliteNotADatabase => StoreFault.Damaged,
        _ => null,
    };

    // Codes: PostgreSQL's manual, appendix A.
    private static StoreFault? ReadPostgres(PostgresException fault) => fault.SqlState switch
    {
        PostgresErrorCodes.DiskFull or PostgresErrorCodes.OutOfMemory => StoreFault.Full,
        PostgresErrorCodes.ReadOnlySqlTransaction or PostgresErrorCodes.InsufficientPrivilege => StoreFault.NotWritable,
        PostgresErrorCodes.LockNotAvailable or PostgresErrorCodes.QueryCanceled or PostgresErrorCodes.DeadlockDetected => StoreFault.Busy,
        _ when fault.SqlState.StartsWith("08", StringComparison.Ordinal) || fault.SqlState.StartsWith("57P", StringComparison.Ordinal)
            || fault.SqlState.StartsWith("28", StringComparison.Ordinal) || fault.SqlState.StartsWith("3D", StringComparison.Ordinal)
            || fault.SqlState.StartsWith("53", StringComparison.Ordinal) => StoreFault.Unreachable,
        _ => null,
    };

    private static StoreUnavailableException? Of(StoreFault? fault, Exception cause) => fault switch
    {
        null => null,
        StoreFault.Full => new(StoreFault.Full, "The disk, or the room allowed for the database, is full.", cause),
        StoreFault.NotWritable => new(StoreFault.NotWritable, "The data folder or the database in it cannot be written.", cause),
        StoreFault.Busy => new(StoreFault.Busy, "Another program was writing to the database for longer than we wait.", cause),
        StoreFault.Unreachable => new(StoreFault.Unreachable, "The database server does not answer, or does not let us in.", cause),
        StoreFault.Damaged => new(StoreFault.Damaged, "The database's file is damaged, or is no database.", cause),
        _ => new(fault.Value, cause.Message, cause),
    };
}
