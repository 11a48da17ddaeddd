using System.Data.Common;
using System.Globalization;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace PanelService.Store.Model;

/// <summary>What SQLite forgets with each connection: how surely it writes, how long it waits, how far it may grow.</summary>
internal sealed class SqliteConnectionSetUp(StoreOptions options) : DbConnectionInterceptor
{
    private const long BytesPerMegabyte = 1024 * 1024;
    private const long BytesPerPage = 4096;

    // FULL: a commit is on the disk before it is answered, also in write-ahead mode.
    private readonly string _pragmas = string.Create(
        CultureInfo.InvariantCulture,
        $"PRAGMA synchronous=FULL; PRAGMA foreign_keys=ON; PRAGMA busy_timeout={options.BusySeconds * 1000};")
        + (options.MostMegabytes is { } most
            ? string.Create(CultureInfo.InvariantCulture, $" PRAGMA max_page_count={most * BytesPerMegabyte / BytesPerPage};")
            : "");

    /// <inheritdoc/>
    public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData)
    {
        using DbCommand command = connection.CreateCommand();
        command.CommandText = _pragmas;
        command.ExecuteNonQuery();
    }

    /// <inheritdoc/>
    public override async Task ConnectionOpenedAsync(
        DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancellationToken = default)
    {
        await using DbCommand command = connection.CreateCommand();
        command.CommandText = _pragmas;
        await command.ExecuteNonQueryAsync(cancellationToken);
    }
}
