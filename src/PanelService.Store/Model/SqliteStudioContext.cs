using Microsoft.EntityFrameworkCore;

namespace PanelService.Store.Model;

/// <summary>The studio in a SQLite file; a type of its own, since its migrations are its own.</summary>
internal sealed class SqliteStudioContext(DbContextOptions<SqliteStudioContext> options) : StudioContext(options);
