using PanelService.Store;
using PanelService.Store.Faults;

namespace PanelService.Hosting;

/// <summary>
/// Opens the studio's memory before the first request. A database newer than the program ends the start: nothing good can
/// come of running beside it. Any other fault is logged and tried again with each request, so that the service stays up
/// while somebody makes room or mends the folder.
/// </summary>
internal sealed partial class MemoryStart(Studio studio, ILogger<MemoryStart> log) : IHostedService
{
    /// <inheritdoc/>
    public async Task StartAsync(CancellationToken cancellationToken)
    {
        try
        {
            await studio.OpenAsync(cancellationToken);
            Opened(log, studio.Options.UsesPostgres ? "PostgreSQL" : studio.Options.FilePath);
        }
        catch (StoreUnavailableException fault) when (fault.Fault != StoreFault.Newer)
        {
            // Logged where it was found.
        }
    }

    /// <inheritdoc/>
    public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    [LoggerMessage(Level = LogLevel.Information, Message = "The studio's memory: {Where}")]
    private static partial void Opened(ILogger log, string where);
}
