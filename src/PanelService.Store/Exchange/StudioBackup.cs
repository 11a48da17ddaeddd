using System.Data.Common;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using PanelService.Store.Faults;
using PanelService.Store.Model;

namespace PanelService.Store.Exchange;

/// <summary>A consistent copy of the live database in one file, made while others read and write.</summary>
/// <param name="studio">The database.</param>
public sealed class StudioBackup(Studio studio)
{
    /// <summary>Whether this database is a file that can be copied so; PostgreSQL has pg_dump.</summary>
    public bool IsPossible => !studio.Options.UsesPostgres;

    /// <summary>Writes the copy; the file appears when it is whole, and an existing one is left alone.</summary>
    /// <param name="path">Where to.</param>
    /// <param name="cancellation">Gives up before it begins.</param>
    /// <exception cref="IOException">There is such a file already.</exception>
    /// <exception cref="StoreUnavailableException">The database cannot be read, or the copy not be written.</exception>
    public async Task WriteAsync(string path, CancellationToken cancellation)
    {
        if (File.Exists(path))
        {
            throw new IOException($"{path} is there already.");
        }

        string part = $"{path}.part";
        File.Delete(part);
        _ = await studio.ReadAsync(
            context =>
            {
                Copy(context, part);
                return Task.FromResult(true);
            },
            cancellation);
        File.Move(part, path);
    }

    // SQLite's own backup: pages are copied under a read lock, so the copy is the database of one moment.
    private static void Copy(StudioContext context, string path)
    {
        var source = (SqliteConnection)context.Database.GetDbConnection();
        using var live = new SqliteConnection(source.ConnectionString);
        live.Open();
        using (var copy = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = path, Pooling = false }.ToString()))
        {
            copy.Open();
            live.BackupDatabase(copy);
            using DbCommand alone = copy.CreateCommand();
            alone.CommandText = "PRAGMA journal_mode=DELETE";
            alone.ExecuteNonQuery();
        }
    }
}
