using Microsoft.Extensions.Logging.Abstractions;

namespace PanelService.Store.Tests.Hosts;

/// <summary>One studio's database, through as many runs of the service as a test likes.</summary>
public abstract class Home : IDisposable
{
    /// <summary>The settings that name it.</summary>
    internal abstract (string Key, string Value)[] Settings { get; }

    /// <summary>The same as options.</summary>
    internal abstract StoreOptions Options { get; }

    /// <summary>Starts the service over it.</summary>
    internal StudioHost Start(params (string Key, string Value)[] more) => new([.. Settings, .. more]);

    /// <summary>Opens it without a service.</summary>
    internal Studio OpenStudio() => new(Options, NullLogger<Studio>.Instance);

    /// <inheritdoc/>
    public void Dispose()
    {
        Dispose(true);
        GC.SuppressFinalize(this);
    }

    /// <summary>Removes it.</summary>
    protected abstract void Dispose(bool disposing);
}
