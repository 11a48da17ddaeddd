using System.ComponentModel.DataAnnotations;

namespace PanelService.Store;

/// <summary>Where the studio's memory is kept; section "PanelService" of the configuration.</summary>
public sealed class StoreOptions
{
    /// <summary>The section's name.</summary>
    public const string Section = "PanelService";

    /// <summary>The database's file within the data folder.</summary>
    public const string FileName = "studio.db";

    /// <summary>The folder for everything that is kept. The host fills in its own default.</summary>
    [Required]
    public string DataFolder { get; set; } = "data";

    /// <summary>A connection string to PostgreSQL; null or empty: SQLite in the data folder.</summary>
    public string? Postgres { get; set; }

    /// <summary>How many megabytes the SQLite file may grow to, 1 to 1 000 000; null: as many as the disk has.</summary>
    [Range(1, 1_000_000)]
    public int? MostMegabytes { get; set; }

    /// <summary>Seconds to wait for another process that is writing, 1 to 600. Default 30.</summary>
    [Range(1, 600)]
    public int BusySeconds { get; set; } = 30;

    /// <summary>The database's file.</summary>
    public string FilePath => Path.Combine(DataFolder, FileName);

    /// <summary>Whether PostgreSQL is meant.</summary>
    public bool UsesPostgres => !string.IsNullOrWhiteSpace(Postgres);
}
