using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace PanelService.Store.Model;

/// <summary>Makes contexts for the database that is set.</summary>
internal sealed class Contexts
{
    private readonly Func<StudioContext> _create;

    internal Contexts(StoreOptions options) => _create = options.UsesPostgres ? Postgres(options) : Sqlite(options);

    internal StudioContext Create() => _create();

    private static Func<StudioContext> Sqlite(StoreOptions options)
    {
        string connection = new SqliteConnectionStringBuilder
        {
            DataSource = options.FilePath,
            Mode = SqliteOpenMode.ReadWriteCreate,
            DefaultTimeout = options.BusySeconds,
        }.ToString();
        DbContextOptions<SqliteStudioContext> built = new DbContextOptionsBuilder<SqliteStudioContext>()
            .UseSqlite(connection)
            .AddInterceptors(new SqliteConnectionSetUp(options))
            .Options;
        return () => new SqliteStudioContext(built);
    }

    private static Func<StudioContext> Postgres(StoreOptions options)
    {
        DbContextOptions<PostgresStudioContext> built = new DbContextOptionsBuilder<PostgresStudioContext>()
            .UseNpgsql(options.Postgres)
            .Options;
        return () => new PostgresStudioContext(built);
    }
}
