using Microsoft.Extensions.Logging.Abstractions;
using PanelService.Store;
using PanelService.Store.Exchange;
using PanelService.Store.Faults;

namespace PanelService.Hosting;

/// <summary><c>backup FILE</c>: a consistent copy of the database, whether or not the service runs beside it.</summary>
internal static class BackupCommand
{
    internal const string Name = "backup";
    private const int Wrong = 1;

    internal static async Task<int> RunAsync(string[] arguments, StoreOptions options, TextWriter said, TextWriter faults)
    {
        if (arguments is not [_, var path])
        {
            await faults.WriteLineAsync("Expected: backup FILE");
            return Wrong;
        }

        using var studio = new Studio(options, NullLogger<Studio>.Instance);
        var backup = new StudioBackup(studio);
        if (!backup.IsPossible)
        {
            await faults.WriteLineAsync("The studio's memory is kept in PostgreSQL: back it up with pg_dump, or take GET /api/export.");
            return Wrong;
        }

        try
        {
            await backup.WriteAsync(Path.GetFullPath(path), CancellationToken.None);
            await said.WriteLineAsync($"{options.FilePath} was copied to {path}.");
            return 0;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or StoreUnavailableException)
        {
            await faults.WriteLineAsync($"Nothing was copied: {fault.Message}");
            return Wrong;
        }
    }
}
