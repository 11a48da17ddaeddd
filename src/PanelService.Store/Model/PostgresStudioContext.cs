using Microsoft.EntityFrameworkCore;

namespace PanelService.Store.Model;

/// <summary>The studio in PostgreSQL; a type of its own, since its migrations are its own.</summary>
internal sealed class PostgresStudioContext(DbContextOptions<PostgresStudioContext> options) : StudioContext(options);
