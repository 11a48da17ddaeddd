using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;

namespace PanelService.Store.Model;

/// <summary>Lets the migration tool make the SQLite context; nothing is opened.</summary>
internal sealed class SqliteDesignTime : IDesignTimeDbContextFactory<SqliteStudioContext>
{
    /// <inheritdoc/>
    public SqliteStudioContext CreateDbContext(string[] args) =>
        new(new DbContextOptionsBuilder<SqliteStudioContext>().UseSqlite("Data Source=:memory:").Options);
}

/// <summary>Lets the migration tool make the PostgreSQL context; nothing is opened.</summary>
internal sealed class PostgresDesignTime : IDesignTimeDbContextFactory<PostgresStudioContext>
{
    /// <inheritdoc/>
    public PostgresStudioContext CreateDbContext(string[] args) =>
        new(new DbContextOptionsBuilder<PostgresStudioContext>().UseNpgsql("Host=localhost").Options);
}
