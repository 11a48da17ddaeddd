using Microsoft.EntityFrameworkCore;
using PanelService.Store.Faults;
using PanelService.Store.Model;

namespace PanelService.Store;

/// <summary>
/// Brings the database up to date once, before anything else touches it. A database that knows changes this program does
/// not know is left alone.
/// </summary>
internal sealed class Opening(StoreOptions options, Contexts contexts) : IDisposable
{
    private const string LockFile = "studio.lock";

    // The table that the migrations of one process keep others out with. SQLite's outlives a process that was killed.
    private const string MigrationsLock = "__EFMigrationsLock";

    private readonly SemaphoreSlim _gate = new(1, 1);
    private volatile bool _done;

    /// <inheritdoc/>
    public void Dispose() => _gate.Dispose();

    internal async Task EnsureAsync(CancellationToken cancellation)
    {
        if (_done)
        {
            return;
        }

        await _gate.WaitAsync(cancellation);
        try
        {
            if (!_done)
            {
                await OpenAsync(cancellation);
                _done = true;
            }
        }
        finally
        {
            _gate.Release();
        }
    }

    private async Task OpenAsync(CancellationToken cancellation)
    {
        await using StudioContext context = contexts.Create();
        if (options.UsesPostgres)
        {
            await RefuseNewerAsync(context, cancellation);
            await MigrateAsync(context, cancellation);
            return;
        }

        Directory.CreateDirectory(options.DataFolder);

        // Held by the system for as long as this process lives: a lock table found under it belongs to a dead one.
        await using FileStream held = await HoldAsync(Path.Combine(options.DataFolder, LockFile), cancellation);
        if (File.Exists(options.FilePath))
        {
            await RefuseNewerAsync(context, cancellation);
            await context.Database.ExecuteSqlRawAsync($"DROP TABLE IF EXISTS \"{MigrationsLock}\"", cancellation);
        }

        await MigrateAsync(context, cancellation);
        await context.Database.ExecuteSqlRawAsync("PRAGMA journal_mode=WAL", cancellation);
    }

    private async Task<FileStream> HoldAsync(string path, CancellationToken cancellation)
    {
        DateTime until = DateTime.UtcNow.AddSeconds(options.BusySeconds);
        while (true)
        {
            try
            {
                return new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
            }
            catch (IOException fault) when (fault is not (DirectoryNotFoundException or FileNotFoundException) && DateTime.UtcNow < until)
            {
                await Task.Delay(TimeSpan.FromMilliseconds(50), cancellation);
            }
        }
    }

    private static async Task RefuseNewerAsync(StudioContext context, CancellationToken cancellation)
    {
        HashSet<string> known = [.. context.Database.GetMigrations()];
        string? unknown = (await context.Database.GetAppliedMigrationsAsync(cancellation)).FirstOrDefault(name => !known.Contains(name));
        if (unknown is not null)
        {
            throw new StoreUnavailableException(
                StoreFault.Newer,
                $"The database was made by a newer program (it has \"{unknown}\", which this one does not know). It was left as it is: use the newer program, or another data folder.");
        }
    }

    private static async Task MigrateAsync(StudioContext context, CancellationToken cancellation)
    {
        if ((await context.Database.GetPendingMigrationsAsync(cancellation)).Any())
        {
            await context.Database.MigrateAsync(cancellation);
        }
    }
}
